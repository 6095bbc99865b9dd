import type { HoseRun } from '../../model/model.ts';
import type { LinkLaw } from '../../network/links.ts';
import type { HeadShare } from '../assessment.ts';
import { outletLiftOf } from './airLift.ts';
import { barbsLaw, checkValveLaw, coilLaw, fittingsLaw, hoseLaw, type RunEnd } from './linkLaws.ts';
import { add, type Draft, scaledLoss, TANK } from './networkDraft.ts';
import { pumpLaw, secondPumpLaw } from './pumpLaws.ts';

const NOTHING: LinkLaw = { kind: 'resistance', linear: 0, quadratic: 0 };

/** A run of hose and where it goes. */
interface Run {
  /** `intake`, `outlet`, or `outlet-<n>` for the n-th of several outlets. */
  readonly name: string;
  readonly side: 'intake' | 'outlet';
  readonly run: HoseRun;
  readonly from: string;
  readonly to: string;
  readonly end: RunEnd;
  /** False for all but the first of several outlets: they take the same head beside it. */
  readonly counted: boolean;
}

const addRun = (draft: Draft, { name, side, run, from, to, end, counted }: Run): void => {
  const { fittingLawRatio } = draft.constants;
  const coil = coilLaw(run);
  const check = run.checkValveHeadM === undefined ? undefined : checkValveLaw(run.checkValveHeadM);
  const pieces: readonly (readonly [id: string, part: HeadShare['part'], law: LinkLaw | undefined])[] = [
    ['hose', `${side}-hose`, hoseLaw(run)],
    ['fittings', 'fittings', scaledLoss(fittingsLaw(run, end, draft.water), fittingLawRatio)],
    ['barbs', 'barbs', scaledLoss(barbsLaw(run), fittingLawRatio)],
    ['coil', `${side}-hose`, coil],
    ['check-valve', 'fittings', check],
  ];
  const there = pieces.flatMap(([id, part, law]) => (law ? [{ id, part, law }] : []));
  there.forEach(({ id, part, law }, place) => {
    const link = {
      id: `${name}:${id}`,
      from: place === 0 ? from : `${name}:${place}`,
      to: place === there.length - 1 ? to : `${name}:${place + 1}`,
      law,
    };
    add(draft, link, counted ? { part, place: name } : undefined);
  });
};

/** Node into which an outlet pours: the tank, or above its surface a mouth that water falls from. */
const mouthOf = (draft: Draft, name: string, liftM: number): string => {
  // A sump's outlet has its siphon broken: it pours, and a pump too weak to lift gives nothing and lets nothing back.
  if (liftM <= 0 && !draft.layout.gravityFed) return TANK;
  draft.fixedHeadsM[`${name}:lift`] = liftM;
  add(draft, {
    id: `${name}:fall`,
    from: `${name}:mouth`,
    to: `${name}:lift`,
    law: { kind: 'one-way', linear: 1e-6, quadratic: 0 },
  });
  return `${name}:mouth`;
};

/** Adds what a second pump is: itself, and a check valve behind it. */
const addSecond = (draft: Draft, from: string, to: string): void => {
  const second = draft.model.filter.secondPump!;
  const id = `pump:${second.place}`;
  const valve = second.checkValveHeadM;
  const end = valve === undefined ? to : `${id}:out`;
  const role = second.running ? undefined : ({ part: 'fittings', place: id } as const);
  add(draft, { id, from, to: end, law: secondPumpLaw(second) }, second.place === 'behind' ? role : undefined);
  if (valve === undefined) return;
  const counted = second.place === 'behind' ? ({ part: 'fittings', place: id } as const) : undefined;
  add(draft, { id: `${id}:check-valve`, from: end, to, law: checkValveLaw(valve) }, counted);
};

/** The pump, or both where they stand side by side. */
const addPumps = (draft: Draft, from: string, to: string): void => {
  add(draft, { id: 'pump', from, to, law: pumpLaw(draft.model, draft.constants) });
  if (draft.model.filter.secondPump?.place === 'beside') addSecond(draft, from, to);
};

const isBehind = ({ model }: Draft): boolean => model.filter.secondPump?.place === 'behind';

/** From the tank to the filter's first space, with the pumps where they come first. */
export const addInlet = (draft: Draft): void => {
  const { layout } = draft;
  const { intake, outlet } = draft.model.filter;
  const pumpFirst = layout.pumpPlace === 'first';
  const end = pumpFirst ? 'pump:in' : layout.inletSpace;
  if (intake) {
    const ends = { from: TANK, to: end, end: 'intake', counted: true } as const;
    addRun(draft, { name: 'intake', side: 'intake', run: intake, ...ends });
  } else add(draft, { id: 'intake:mouth', from: TANK, to: end, law: NOTHING });
  if (!pumpFirst) return;
  const between = isBehind(draft) && !outlet;
  addPumps(draft, 'pump:in', between ? 'pump:out' : layout.inletSpace);
  if (between) addSecond(draft, 'pump:out', layout.inletSpace);
};

const addBranches = (draft: Draft, from: string): void => {
  draft.model.filter.outletBranches!.forEach(({ run, liftM }, place) => {
    const name = `outlet-${place + 1}`;
    const to = mouthOf(draft, name, liftM);
    addRun(draft, { name, side: 'outlet', run, from, to, end: 'outlet', counted: place === 0 });
  });
};

/** From the filter's last space to the tank, with the pumps where they come last. */
export const addOutlet = (draft: Draft): void => {
  const { layout } = draft;
  const { outlet, outletBranches = [] } = draft.model.filter;
  const outletLiftM = outletLiftOf(draft.model, layout);
  let from = layout.outletSpace;
  if (layout.pumpPlace === 'last') {
    addPumps(draft, from, 'pump:out');
    from = 'pump:out';
  }
  if (isBehind(draft) && (outlet || layout.pumpPlace === 'last')) {
    addSecond(draft, from, 'pump:behind:to');
    from = 'pump:behind:to';
  }
  const run = { name: 'outlet', side: 'outlet', from, counted: true } as const;
  if (outlet && outletBranches.length > 0) {
    addRun(draft, { ...run, run: outlet, to: 'outlet:parting', end: 'joined' });
    addBranches(draft, 'outlet:parting');
    return;
  }
  const to = mouthOf(draft, 'outlet', outletLiftM);
  if (outlet) addRun(draft, { ...run, run: outlet, to, end: 'outlet' });
  else if (layout.pumpPlace === 'last') add(draft, { id: 'outlet:nozzle', from, to, law: NOTHING });
};
