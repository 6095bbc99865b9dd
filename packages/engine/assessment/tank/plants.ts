import type { Tank } from '../../model/model.ts';
import { type TankFigures, usualTankFigures } from './tankFigures.ts';

/** What plants take up at the most, and the level at which they take half of it. */
export interface Plants {
  readonly mostKgNPerM3PerS: number;
  readonly halfKgNPerM3: number;
}

const ratioOf = (planting: Tank['planting'], figures: TankFigures): number => {
  if (planting === 'lightly') return figures.lightPlantingRatio;
  return planting === 'densely' ? figures.densePlantingRatio : 1;
};

/** Plants of a tank that has some, as strong as the job says. */
export const usualPlants = (
  tank: Pick<Tank, 'planting'>,
  figures: TankFigures = usualTankFigures,
): Plants => ({
  mostKgNPerM3PerS: figures.plantUptakeKgNPerM3PerS * ratioOf(tank.planting, figures),
  halfKgNPerM3: figures.plantHalfKgNPerM3,
});

/** Plants take ammonia first, and nitrate with what strength is left, kg N/(m³·s). */
export const plantUptake = (
  { mostKgNPerM3PerS: most, halfKgNPerM3: half }: Plants,
  levels: { readonly ammonia: number; readonly nitrate: number },
): { readonly ammonia: number; readonly nitrate: number } => {
  const [ammonia, nitrate] = [Math.max(levels.ammonia, 0), Math.max(levels.nitrate, 0)];
  const first = (most * ammonia) / (half + ammonia);
  return { ammonia: first, nitrate: ((most - first) * nitrate) / (half + nitrate) };
};
