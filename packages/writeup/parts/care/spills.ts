import type { Spill } from '@fettle/engine/assessment/site/site.ts';
import type { Block } from '../../content/document.ts';
import { length, volume } from '../quantities.ts';
import { heading, lastState, type Writer } from '../writer.ts';

const spillSaid = (writer: Writer, { cause, volumeM3, fallM, spareM3 }: Spill): string =>
  writer.say(spareM3 === undefined ? `care.spill.${cause}` : `care.spill.${cause}.room`, {
    volume: volume(volumeM3),
    fall: length(fallM, 2),
    ...(spareM3 === undefined ? {} : { room: volume(spareM3) }),
  });

/** How much water leaves the tank when the power fails or a hose comes off, where its heights were measured. */
export const spillsPart = (writer: Writer): readonly Block[] => {
  const { spills } = lastState(writer.source).assessment.site;
  if (spills.length === 0) return [];
  return [
    heading(writer, 'care-spills'),
    { kind: 'list', id: 'care-spills', items: spills.map((spill) => spillSaid(writer, spill)) },
  ];
};

/** Whether an air hole in a tube keeps the tank from being drawn further down. */
export const hasAirHole = ({ source }: Writer): boolean => {
  const { intakeHoleM, returnHoleM } = lastState(source).model.filter.placing ?? {};
  return intakeHoleM !== undefined || returnHoleM !== undefined;
};
