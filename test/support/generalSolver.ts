import { createRequire } from 'node:module';
import type { Link, LinkLaw, NetworkSpec } from '../../packages/engine/network/links.ts';

/**
 * What we call of the package. Its own types name their files without endings, which the compiler cannot follow
 * in a package of modules.
 */
interface Project {
  init(reportFile: string, outputFile: string, flowUnits: number, headLossLaw: number): void;
  addNode(id: string, type: number): number;
  setNodeValue(node: number, property: number, value: number): void;
  addLink(id: string, type: number, from: string, to: string): number;
  setPipeData(link: number, lengthM: number, boreMm: number, roughnessMm: number, minorK: number): void;
  setLinkValue(link: number, property: number, value: number): void;
  getLinkValues(property: number): number[];
  addCurve(id: string): void;
  getCurveIndex(id: string): number;
  setCurve(curve: number, x: readonly number[], y: readonly number[]): void;
  setHeadCurveIndex(link: number, curve: number): void;
  setOption(option: number, value: number): void;
  openH(): void;
  initH(from: number): void;
  runH(): number;
  closeH(): void;
  close(): void;
}

interface Workspace {
  loadModule(): Promise<void>;
}

interface Package {
  readonly Workspace: new () => Workspace;
  readonly Project: new (workspace: Workspace) => Project;
  readonly FlowUnits: { readonly CMH: number };
  readonly HeadLossType: { readonly DW: number };
  readonly InitHydOption: { readonly InitFlow: number; readonly NoSave: number };
  readonly LinkProperty: {
    readonly Flow: number;
    readonly Length: number;
    readonly MinorLoss: number;
    readonly Diameter: number;
    readonly InitSetting: number;
  };
  readonly LinkType: {
    readonly Pipe: number;
    readonly Pump: number;
    readonly CVPipe: number;
    readonly PBV: number;
  };
  readonly NodeProperty: { readonly Elevation: number };
  readonly NodeType: { readonly Junction: number; readonly Reservoir: number };
  readonly Option: { readonly Accuracy: number; readonly Trials: number };
}

const general: Package = createRequire(import.meta.url)('epanet-js');
const { FlowUnits, HeadLossType, InitHydOption, LinkProperty, LinkType, NodeProperty, NodeType, Option } =
  general;

export type { Workspace as GeneralWorkspace };

/**
 * The general pipe-network solver epanet-js (EPANET 2.3 compiled to WebAssembly) behind our own description of a
 * network. It keeps everything in feet and cubic feet per second and rounds its constants, in its public source
 * (`src/types.h`, `src/hydcoeffs.c`): kinematic viscosity 1.1e-5 ft²/s, gravity 32.2 ft/s², velocity heads
 * 0.02517·K/d⁴ instead of 8/(π²·32.2), and 101.94 m³/h to 1 ft³/s. None of these is a law of water, so both
 * sides are given the same ones here, and what is left to compare is the solving.
 */
const FOOT = 0.3048;
export const REFERENCE_VISCOSITY = 1.1e-5 * FOOT ** 2;
export const REFERENCE_GRAVITY = 32.2 * FOOT;
/** What the package makes of one velocity head, in velocity heads. */
export const REFERENCE_VELOCITY_HEAD = (0.02517 * Math.PI ** 2 * 32.2) / 8;
/** What the package calls 1 m³/h, in m³/s. */
export const REFERENCE_CUBIC_METRE_PER_HOUR = FOOT ** 3 / 101.94;

/**
 * Bore of the pipe that stands for a linear–quadratic bed, if nothing else is asked for: so wide that water in it
 * creeps (Reynolds number below 2000), where its friction is exactly linear; length gives the linear part, K the
 * quadratic one.
 */
const WIDE_BORE = 3;

interface Pipe {
  readonly lengthM: number;
  readonly boreM: number;
  readonly roughnessM: number;
  readonly minorK: number;
}

const pipeFor = (law: LinkLaw, bedBoreM: number): Pipe => {
  if (law.kind === 'conduit' && law.laminarConstant === 64 && law.linear === 0) {
    const boreM = law.hydraulicDiameterM;
    const minorK = law.minorK / REFERENCE_VELOCITY_HEAD;
    return { lengthM: law.lengthM, boreM, roughnessM: law.relativeRoughness * boreM, minorK };
  }
  if (law.kind === 'resistance' || law.kind === 'one-way') {
    const areaM2 = (Math.PI * bedBoreM ** 2) / 4;
    const perMetre = (32 * REFERENCE_VISCOSITY) / (REFERENCE_GRAVITY * bedBoreM ** 2 * areaM2);
    return {
      lengthM: Math.max(law.linear / perMetre, 1e-6),
      boreM: bedBoreM,
      roughnessM: 1e-9,
      minorK: (law.quadratic * 2 * REFERENCE_GRAVITY * areaM2 ** 2) / REFERENCE_VELOCITY_HEAD,
    };
  }
  throw new Error(`the general solver has no ${law.kind} of this kind`);
};

/** A network in the package, ready to run, with the pipe that stands for each link but the pumps. */
export interface LoadedNetwork {
  readonly project: Project;
  readonly pipes: readonly (Pipe | undefined)[];
}

export const loadGeneralSolver = async (): Promise<Workspace> => {
  const workspace = new general.Workspace();
  await workspace.loadModule();
  return workspace;
};

const addPump = (project: Project, link: Link, law: Extract<LinkLaw, { kind: 'pump' }>): void => {
  const index = project.addLink(link.id, LinkType.Pump, link.from, link.to);
  const free = (law.shutoffHeadM / law.coefficient) ** (1 / law.exponent);
  project.addCurve(link.id);
  const curve = project.getCurveIndex(link.id);
  const flows = [0, 0.5 * free, free].map((flow) => flow / REFERENCE_CUBIC_METRE_PER_HOUR);
  const middle = law.shutoffHeadM - law.coefficient * (0.5 * free) ** law.exponent;
  project.setCurve(curve, flows, [law.shutoffHeadM, middle, 0]);
  project.setHeadCurveIndex(index, curve);
};

/** Ahead of the seat of a check valve that cracks, a valve that breaks as much pressure as it asks for. */
const addBreaker = (project: Project, link: Link, crackingHeadM: number): void => {
  const valve = project.addLink(`${link.id}-breaker`, LinkType.PBV, link.from, `${link.id}-seat`);
  project.setLinkValue(valve, LinkProperty.Diameter, 1000);
  project.setLinkValue(valve, LinkProperty.InitSetting, crackingHeadM);
};

const addNodes = (project: Project, spec: NetworkSpec): void => {
  for (const node of new Set(spec.links.flatMap(({ from, to }) => [from, to]))) {
    const fixed = spec.fixedHeadsM[node];
    const index = project.addNode(node, fixed === undefined ? NodeType.Junction : NodeType.Reservoir);
    if (fixed !== undefined) project.setNodeValue(index, NodeProperty.Elevation, fixed);
  }
};

/**
 * Loads a network of round conduits, linear–quadratic beds, check valves and power-law pumps. Check valves that crack
 * are two links there, so they have to come last.
 * @param bedBoreM bore of the pipes that stand for beds, m; water must creep in them
 */
export const loadNetwork = (workspace: Workspace, spec: NetworkSpec, bedBoreM = WIDE_BORE): LoadedNetwork => {
  const project = new general.Project(workspace);
  project.init('report', '', FlowUnits.CMH, HeadLossType.DW);
  addNodes(project, spec);
  const pipes = spec.links.map((link) => {
    if (link.law.kind === 'pump') {
      addPump(project, link, link.law);
      return undefined;
    }
    const { law } = link;
    const cracks = law.kind === 'one-way' && (law.crackingHeadM ?? 0) > 0;
    const kind = law.kind === 'one-way' ? LinkType.CVPipe : LinkType.Pipe;
    const from = cracks ? `${link.id}-seat` : link.from;
    if (cracks) project.addNode(from, NodeType.Junction);
    const index = project.addLink(link.id, kind, from, link.to);
    if (cracks) addBreaker(project, link, law.crackingHeadM!);
    const pipe = pipeFor(link.law, bedBoreM);
    project.setPipeData(index, pipe.lengthM, 1000 * pipe.boreM, 1000 * pipe.roughnessM, pipe.minorK);
    return pipe;
  });
  project.setOption(Option.Trials, 500);
  project.openH();
  return { project, pipes };
};

/** Multiplies what every pipe takes, as it was loaded, by a ratio. */
export const scaleResistances = ({ project, pipes }: LoadedNetwork, ratio: number): void => {
  for (const [place, pipe] of pipes.entries()) {
    if (!pipe) continue;
    project.setLinkValue(place + 1, LinkProperty.Length, pipe.lengthM * ratio);
    project.setLinkValue(place + 1, LinkProperty.MinorLoss, pipe.minorK * ratio);
  }
};

/** Sets how closely the package is to solve: the sum of all changes of flow over the sum of all flows. */
export const setAccuracy = ({ project }: LoadedNetwork, accuracy: number): void =>
  project.setOption(Option.Accuracy, accuracy);

/** Solves from the package's own first guess, or from its last flows. */
export const run = ({ project }: LoadedNetwork, from: 'rest' | 'last'): void => {
  project.initH(from === 'rest' ? InitHydOption.InitFlow : InitHydOption.NoSave);
  project.runH();
};

/** Flows of all links in their written order, m³/s. */
export const flowsOf = ({ project }: LoadedNetwork): number[] =>
  project.getLinkValues(LinkProperty.Flow).map((flow) => flow * REFERENCE_CUBIC_METRE_PER_HOUR);

/** Gives the network's memory back. */
export const unload = ({ project }: LoadedNetwork): void => {
  project.closeH();
  project.close();
};
