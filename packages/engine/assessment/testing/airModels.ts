import type { Model, Pump } from '../../model/model.ts';
import { airLiftOf, bareTubeFlow } from '../hydraulics/airLift.ts';
import { filterOf, gramsPerDay, hose, job, type Layers, litresPerHour, packed, pump } from './modelParts.ts';
import { withFilter } from './models.ts';

/** An air pump; what the bare tubes give with it follows from their family: see `onAir`. */
export const air = (airLPerH: number): Pump => ({
  curve: { kind: 'air-lift', airFlowM3PerS: litresPerHour(airLPerH) },
  ratedFlowM3PerS: litresPerHour(airLPerH),
  powerW: 3,
  speedRatio: 1,
});

/** A job whose filter is driven by so much air. */
export const onAir = (model: Model, airLPerH: number): Model => {
  const driven = withFilter(model, { pump: air(airLPerH) });
  const ratedFlowM3PerS = bareTubeFlow(airLiftOf(driven));
  return withFilter(model, { pump: { ...air(airLPerH), ratedFlowM3PerS } });
};

const lift = { tubeBore: 0.016, tubeRise: 0.22, airDepth: 0.22 };

/** A sponge on a lift tube in a tank of 60 L. */
export const spongeFilter = (layers: Layers = { sponge: [['foam-30ppi', 35]] }): Model =>
  onAir(
    job(
      filterOf(
        'sponge-filter',
        { spongeThickness: 0.035, coreDiameter: 0.025, spongeHeight: 0.12, ...lift },
        { pump: air(60) },
      ),
      packed(layers),
      { volumeM3: 0.06, feedKgPerS: gramsPerDay(0.3) },
    ),
    60,
  );

/** A mat across a tank of 100 L, in one piece. */
export const matFilter = (layers: Layers = { mat: [['foam-20ppi', 50]] }): Model =>
  onAir(
    job(
      filterOf(
        'mat-filter',
        { matWidth: 0.35, matWetHeight: 0.3, matThickness: 0.05, spaceBehind: 0.04, ...lift, tubeBore: 0.02 },
        { pump: air(60) },
      ),
      packed(layers),
      { volumeM3: 0.1, feedKgPerS: gramsPerDay(0.4) },
    ),
    60,
  );

/** A plate under gravel in a tank of 120 L. */
export const undergravel = (layers: Layers = { gravel: [['gravel-4mm', 60]] }): Model =>
  onAir(
    job(
      filterOf(
        'undergravel',
        { plateLength: 0.75, plateWidth: 0.33, gravelDepth: 0.06, tubes: 2, ...lift, tubeBore: 0.02 },
        { pump: air(120) },
      ),
      packed(layers),
      { volumeM3: 0.12, feedKgPerS: gramsPerDay(0.6) },
    ),
    120,
  );

/** A column of sand that water carries. */
export const fluidisedBed = (layers: Layers = { column: [['fluidised-sand', 180]] }): Model =>
  job(
    filterOf(
      'fluidised-bed',
      {
        columnBore: 0.11,
        columnHeight: 0.6,
        spreaderArea: 3e-4,
        screenSlot: 2e-4,
        screenArea: 1.5e-3,
      },
      { pump: pump(1.2, 600, 10), intake: hose({ lengthM: 0.5 }), outlet: hose({ lengthM: 0.6 }) },
    ),
    packed(layers),
  );

/** A chamber of carriers that tumble. */
export const movingBed = (layers: Layers = { carriers: [['plastic-carrier-10mm-tumbling', 120]] }): Model =>
  onAir(
    job(
      filterOf(
        'moving-bed',
        {
          innerWidth: 0.12,
          innerDepth: 0.1,
          innerHeight: 0.22,
          inletArea: 1e-3,
          outletArea: 8e-4,
          screenSlot: 0.005,
          ...lift,
        },
        { pump: air(90) },
      ),
      packed(layers),
      { volumeM3: 0.1, feedKgPerS: gramsPerDay(0.5) },
    ),
    90,
  );
