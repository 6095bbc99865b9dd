import type { LiftTube } from '../laws/hydraulics/airLift.ts';
import type { ComesAs } from '../model/medium.ts';
import type { Measurements } from '../model/model.ts';
import type { Drive } from '../model/pump.ts';

/** A point of the section drawing, m; x to the right, y upward, origin at the housing's lower left inside. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A rectangle of the section drawing, m. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A body of well-mixed water between chambers: a node of the network. */
export interface Space {
  readonly id: string;
  readonly label: string;
  readonly box: Box;
  /**
   * Water in it that belongs to the filter, m³, where the box and the chambers' extent across the section do not say:
   * tubes, and tank water before the filter.
   */
  readonly volumeM3?: number;
}

/** A plane slot that nobody meant: a way past the media. */
export interface Gap {
  /** Clear thickness of the slot, m. */
  readonly thicknessM: number;
  /** Extent across the flow, m. */
  readonly widthM: number;
  /** Extent along the flow, m. */
  readonly lengthM: number;
}

/** A space that media can fill, between two spaces, with one gap past it. */
export interface Chamber {
  readonly id: string;
  readonly label: string;
  /** What its media may be to the hand: what it is made to hold. */
  readonly holds: readonly ComesAs[];
  /** Water's order: `from` upstream, `to` downstream. */
  readonly from: string;
  readonly to: string;
  /** Cross-section that the water passes, m²; about a tube its mean, so that times the depth it is the volume. */
  readonly areaM2: number;
  /** Extent along the flow, m. */
  readonly depthM: number;
  readonly flow: 'up' | 'down' | 'left' | 'right';
  /** True where the first bed as listed (top, or pump's side) is the first that the water meets. */
  readonly listedInWaterOrder: boolean;
  readonly gap: Gap;
  /** Open share of the floor or grid that holds the media. */
  readonly floorOpenFraction: number;
  /** Smallest clear width across the flow, m: a piece wider than this does not fit. */
  readonly widthM: number;
  /**
   * Present where the chamber lies about a tube and the water crosses it towards the tube: the area that it passes
   * shrinks on its way. `depthM` reaches from the inner radius outward, and layers lie on the tube.
   */
  readonly ring?: { readonly innerRadiusM: number; readonly lengthM: number };
  /** Present where water trickles down over the media with air between them. */
  readonly trickles?: true;
  /** Present where water or air moves the media about in it instead of seeping through a bed at rest. */
  readonly moved?: 'carried-by-water' | 'stirred';
  /** Present where its label already says what lies in it: a sock, a sponge, a mat. */
  readonly isNamedByMedia?: true;
  /** Clear width of the screens that hold its media, m, where they are moved. */
  readonly screenSlotM?: number;
  readonly box: Box;
  /** The other cut of a chamber that lies about a tube, where the section meets it twice. */
  readonly twin?: Box;
}

/** A way between spaces that is meant: a hole, a slot or a window. */
export interface Opening {
  readonly id: string;
  readonly label: string;
  readonly from: string;
  readonly to: string;
  readonly areaM2: number;
  /** True where water that takes it misses media that it should meet. */
  readonly bypass: boolean;
  /** Height over the tank's surface at which its water falls free, m; absent where water stands behind it too. */
  readonly fallsAtM?: number;
  /** Key of the measurement that closes it at 0; absent where it must stay open. */
  readonly closedBy?: string;
  readonly at: Point;
}

/** A gap between spaces that is not beside one chamber, such as a partition's edge. */
export interface Leak extends Gap {
  readonly id: string;
  readonly label: string;
  /** Key of the measurement that is its thickness. */
  readonly measurement: string;
  /** What closes it: a strip laid in, or a new seal ring. */
  readonly sealedBy: 'strip' | 'ring';
  readonly from: string;
  readonly to: string;
  readonly at: Point;
}

/** An edge that water falls over once the level in `from` stands above its crest. */
export interface Weir {
  readonly id: string;
  readonly label: string;
  readonly from: string;
  /** Space that it falls into; the tank where left out. */
  readonly to?: string;
  readonly crestWidthM: number;
  /** Height of the crest above the tank's surface, m. */
  readonly crestHeightM: number;
  /** `outlet` is the normal way out, `passage` the normal way on; `overflow` opens when the media clog. */
  readonly purpose: 'outlet' | 'passage' | 'overflow';
  readonly at: Point;
}

/** A part of an open box with a level of its own. */
export interface OpenSection {
  readonly space: string;
  /** Area of its water's surface, m². */
  readonly areaM2: number;
  /** Level that stays when nothing flows, m above the floor: its lowest way out, or the running level of the last. */
  readonly restLevelM: number;
}

/** A filter that the tank's overflow feeds and that stands open below it: its pump really lifts the water back. */
export interface GravityFed {
  /** Height of the box's floor over the tank's surface, m; below 0. */
  readonly floorHeightM: number;
  /** Running level over the floor in the section that the pump draws from, m. */
  readonly returnLevelM: number;
  /** Height of the box's walls, m. */
  readonly wallHeightM: number;
  /** In the water's order, the pump's last. */
  readonly sections: readonly OpenSection[];
}

/** A length to be shown on the drawing. */
export interface DimensionLine {
  /** Key of the measurement. */
  readonly measurement: string;
  readonly from: Point;
  readonly to: Point;
}

/** The visible end of a hose or tube, drawn at its true bore. */
export interface Stub {
  readonly side: 'intake' | 'outlet';
  readonly boreM: number;
  /** Middle line in the water's order. */
  readonly along: readonly Point[];
}

/** What a family makes of its measurements: chambers, ways and geometry. All lengths in metres. */
export interface Layout {
  readonly spaces: readonly Space[];
  /** In the order in which a hand meets them: from the top down, left before right, from the pump's side. */
  readonly chambers: readonly Chamber[];
  readonly openings: readonly Opening[];
  readonly leaks: readonly Leak[];
  readonly weirs: readonly Weir[];
  /** Space into which the tank's water first comes (behind intake and, if first, pump). */
  readonly inletSpace: string;
  /** Space from which it leaves (to the pump, if last, and the outlet); with weirs, the last space before them. */
  readonly outletSpace: string;
  readonly pumpPlace: 'first' | 'last';
  /** Present where the tank's overflow feeds the filter. */
  readonly gravityFed?: GravityFed;
  /** The tubes that air can lift the water in; absent where the family has none. */
  readonly liftTube?: LiftTube;
  readonly drawing: {
    readonly housing: readonly Box[];
    readonly pump: Box;
    /** Where air drives it: the air line from the air pump's side to its end in the lift tube. */
    readonly airLine?: readonly Point[];
    /** True where the body is open at the top: a tank, drawn as far as the filter needs. */
    readonly openTop?: true;
    /** Walls inside: partitions, tubes. */
    readonly walls: readonly Box[];
    /** Hose ends and tubes outside the chambers. */
    readonly stubs: readonly Stub[];
    /** The tank's water surface in the drawing's height, where the filter hangs in or on the tank. */
    readonly waterLevelY?: number;
    /** Water surfaces inside the filter. */
    readonly levels?: readonly { readonly x: number; readonly y: number; readonly width: number }[];
    readonly inlet: Point;
    readonly outlet: Point;
    readonly dimensions: readonly DimensionLine[];
    /** The way of the water by points, from inlet to outlet through every space and chamber of the main route. */
    readonly mainPath: readonly Point[];
  };
}

/** One measurement that a family asks for. */
export interface Measurement {
  readonly key: string;
  readonly label: string;
  readonly kind: 'length' | 'area' | 'count' | 'fraction' | 'yes-no';
  /** SI value taken where the document is silent; absent where the family cannot do without. */
  readonly assumed?: { readonly value: number; readonly doubtFactor?: number; readonly because: string };
  readonly least: number;
  readonly most: number;
  /** How to take it, in one sentence. */
  readonly how: string;
}

/** One kind of construction: adding a family is adding one file that exports one of these. */
export interface Family {
  readonly id: string;
  readonly name: string;
  /** The water's way in one sentence. */
  readonly says: string;
  readonly measurements: readonly Measurement[];
  /** Shut-off head where the maker states none, m; from memory, wide. */
  readonly assumedShutoffHeadM: number;
  /** What can drive it, the usual one first; a pump alone where left out. */
  readonly drives?: readonly Drive[];
  /** Which hose runs the family has. */
  readonly hoses: { readonly intake: boolean; readonly outlet: boolean };
  /** Alterations that make sense for the family, by id. */
  readonly alterations: readonly string[];
  /** True where it is built into the tank, and stays there when it is cleaned. */
  readonly staysInTank?: true;
  /** What must never be done to it, one sentence each. */
  readonly forbidden: readonly string[];
  /** What must never be done in an alteration, by its id: said only where that alteration is weighed or made. */
  readonly forbiddenIn?: Readonly<Record<string, readonly string[]>>;
  /**
   * The layout for these measurements; a measurement that is not given takes its assumed value.
   * Throws a RangeError where one is missing that has none: the document's reader reports that beforehand.
   * @param drive what moves the water; the family's usual one where left out
   */
  layOut(measurements: Measurements, drive?: Drive): Layout;
}
