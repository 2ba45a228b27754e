// Generated from schema/job/1 by `npm run generate`.
import type { Length } from '@evenhem/length'

/** A short name, unique in its list: small letters, digits and hyphens. */
export type Id = string

/** One drapery job: what the workroom made, where it goes, and how it is meant to hang. */
export interface Job {
  /** Where an editor finds this schema. */
  readonly $schema?: string
  /** The name and the version of this format. */
  readonly format: 'evenhem-job/1'
  /** The plugins that this job needs, each with the version of its part of the format. */
  readonly uses?: {
    /** The version of this plugin's part. */
    readonly [k: string]: number
  }
  /** What a length without a unit is in. */
  readonly units: 'in' | 'mm' | 'cm'
  /** What is said once about the whole job. */
  readonly job: JobHead
  /** The fabrics of this job. */
  readonly fabrics?: readonly Fabric[]
  /** The hardware of this job: rods, tracks and what belongs to them. */
  readonly hardware?: readonly Hardware[]
  /** The rooms, in walking order. */
  readonly rooms: readonly Room[]
  /** Readings already taken, by the place that they are a reading of. A reading takes the place of what was ordered; the order stays as it is. */
  readonly found?: {
    readonly [k: string]: Reading
  }
  /** What plugins add to the job. */
  readonly with?: With
}

/** What is said once about the whole job. */
export interface JobHead {
  /** The workroom's number of this job. */
  readonly number: string
  /** What people call this job. */
  readonly name: string
  /** The country of the site, two letters (ISO 3166-1). It picks the safety rules. */
  readonly country: string
  /** Who ordered the draperies. */
  readonly customer?: Party
  /** Where they go. */
  readonly site?: Site
  /** Who made them, and by which rules. */
  readonly workroom?: Workroom
  /** Who measured for the order, and when. */
  readonly measured?: Measured
  /** The day of the installation. */
  readonly install?: string
  /** What whoever opens this job should know first. */
  readonly note?: string
}

/** A person or a firm. */
export interface Party {
  /** The name. */
  readonly name: string
  /** The telephone number. */
  readonly phone?: string
  /** The e-mail address. */
  readonly email?: string
}

/** Where the draperies go. */
export interface Site {
  /** The address. */
  readonly address?: string
  /** How to get in: keys, parking, pets. */
  readonly access?: string
}

/** Who made the draperies, and the rules they work by. */
export interface Workroom {
  /** The name of the workroom. */
  readonly name: string
  /** Whom to call from the ladder. */
  readonly phone?: string
  /** The e-mail address. */
  readonly email?: string
  /** Where this workroom differs from the trade's defaults. */
  readonly rules?: Rules
}

/** Settings of the workroom. What is not said here is the trade's default. */
export interface Rules {
  /** How far the two ways to the rod's height may differ. Default 1/8 in. */
  readonly heightsAgree?: Length
  /** How much narrower than the projection a return may be. Default 1/8 in. */
  readonly returnShort?: Length
  /** How much wider than the projection a return may be before it is looked at. Default 1 in. */
  readonly returnOver?: Length
  /** How far a panel's first to last may differ from its place on the rod. Default 1/2 in. */
  readonly widthOff?: Length
  /** How far a finished length may differ from the order. Default 1/4 in. */
  readonly lengthOff?: Length
  /** How much narrower than ordered a return may measure. Default 1/8 in. */
  readonly returnUnder?: Length
  /** How much wider than ordered a return may measure. Default 1/2 in. */
  readonly returnWider?: Length
  /** How far pins can move a hem, from the shallowest to the deepest. Default 1/2 in. */
  readonly pinRange?: Length
  /** How far pins may differ from their setting. Default 1/16 in. */
  readonly pinOff?: Length
  /** How far the two finished lengths of a pair may differ. Default 1/8 in. */
  readonly pairOff?: Length
}

/** Who measured for the order, and when. */
export interface Measured {
  /** Who measured. */
  readonly by?: string
  /** The day it was measured. */
  readonly date?: string
  /** What the tape stood on. */
  readonly on?: 'finished floor' | 'carpet brushed flat' | 'subfloor'
}

/** A fabric of this job. */
export interface Fabric {
  /** The short name by which treatments use this fabric. */
  readonly id: Id
  /** What people call it. */
  readonly name: string
  /** What it is made of. */
  readonly fibres?: readonly Fibre[]
  /** What it is lined with; leave it out when it is not lined. */
  readonly lining?: string
  /** What plugins add to a fabric. */
  readonly with?: With
}

/** A fibre and its share. */
export interface Fibre {
  /** The fibre. */
  readonly fibre: string
  /** Its share of the weight. */
  readonly percent?: number
}

/** Parts that plugins add, by the name of the plugin. */
export interface With {
  readonly [k: string]: object
}

/** An entry of hardware. What else it holds depends on its kind. */
export interface Hardware {
  /** The short name by which treatments use this hardware. */
  readonly id: Id
  /** The sort of hardware; a plugin knows what belongs to it. */
  readonly kind: string
  /** What people call it. */
  readonly name: string
}

/** A room. */
export interface Room {
  /** A short name, unique among the rooms. */
  readonly id: Id
  /** What people call it. */
  readonly name: string
  /** From the level line up to the ceiling. */
  readonly ceiling?: Length
  /** What the floor is. */
  readonly floor?: 'wood' | 'tile' | 'stone' | 'vinyl' | 'carpet' | 'concrete' | 'unfinished'
  /** The windows, from left to right as one walks. */
  readonly windows: readonly Window[]
  /** What plugins add to a room. */
  readonly with?: With
}

/** What one set of treatments dresses. Lengths along the wall run to the right from the left edge of the casing; heights run up from the level line, which passes through the floor where its points say 0. */
export interface Window {
  /** A short name, unique in the room. */
  readonly id: Id
  /** What people call it. */
  readonly name: string
  /** The walls, from left to right. This version takes one. */
  readonly walls: readonly Wall[]
  /** Points of the floor under the window. Without any, the floor is the level line. */
  readonly floor?: readonly FloorPoint[]
  /** What hangs here, from the glass outward. This version takes one. */
  readonly treatments: readonly Treatment[]
  /** What was found at this window that the order cannot hold. */
  readonly found?: WindowFound
  /** What plugins add to a window. */
  readonly with?: With
}

/** A wall with its openings. */
export interface Wall {
  /** A short name, unique in the window. */
  readonly id: Id
  /** What is free at the height of the rod, from the casing outward. */
  readonly space?: WallSpace
  /** What the wall is made of, from the room inward. */
  readonly buildUp?: BuildUp
  /** The board along the floor. */
  readonly baseboard?: Baseboard
  /** The openings, from left to right. This version takes one. */
  readonly openings: readonly Opening[]
}

/** What is free at the height of the rod, from the casing outward. */
export interface WallSpace {
  /** Free wall to the left of the casing. */
  readonly left?: Length
  /** Free wall to the right of the casing. */
  readonly right?: Length
}

/** What the wall is made of, from the room inward. */
export interface BuildUp {
  /** What the screw meets first. */
  readonly surface?: 'wallboard' | 'plaster' | 'masonry' | 'concrete' | 'wood' | 'tile'
  /** How thick that is. */
  readonly board?: Length
  /** What is behind it where the brackets go. */
  readonly behind?: 'wood' | 'metal' | 'hollow' | 'masonry' | 'concrete' | 'unknown'
}

/** The board along the floor. */
export interface Baseboard {
  /** How high it is. */
  readonly height?: Length
  /** How far it stands out from the wall. */
  readonly thickness?: Length
}

/** A window or a door in the wall. */
export interface Opening {
  /** A short name, unique in the wall. */
  readonly id: Id
  /** The frame on the wall around the opening, measured outside. */
  readonly casing?: Casing
  /** The stool below the sash. */
  readonly sill?: Sill
}

/** The frame on the wall around the opening, measured outside. */
export interface Casing {
  /** From its left outside edge to its right outside edge. */
  readonly width?: Length
  /** From the level line up to its top edge. */
  readonly top?: Length
  /** From the level line up to its lowest edge; 0 for a door. */
  readonly bottom?: Length
  /** How wide its boards are. */
  readonly board?: Length
  /** How far it stands out from the wall. */
  readonly thickness?: Length
}

/** The stool below the sash. */
export interface Sill {
  /** From the level line up to its top. */
  readonly top?: Length
  /** How far it stands out from the wall. */
  readonly depth?: Length
}

/** A point of the floor. */
export interface FloorPoint {
  /** A short name, unique among the points. */
  readonly id: Id
  /** Along the wall from the left edge of the casing; to the left is negative. */
  readonly x: Length
  /** Above the level line; below it is negative. */
  readonly y: Length
}

/** Draperies on one rod. */
export interface Treatment {
  /** A short name, unique in the window. */
  readonly id: Id
  /** The entry under `hardware` that it hangs on. */
  readonly hardware: Id
  /** The entry under `fabrics` that it is made of. */
  readonly fabric?: Id
  /** How it opens: a pair opens to both sides. */
  readonly draw: 'pair'
  /** Where the rod is meant to be. */
  readonly rod?: RodOrder
  /** From the floor up to the hem. */
  readonly clearance?: Length
  /** The panels, from left to right. A pair has two. */
  readonly panels: readonly Panel[]
  /** What was found at this treatment that the order cannot hold. */
  readonly found?: TreatmentFound
  /** What plugins add to a treatment. */
  readonly with?: With
}

/** Where the rod is meant to be. */
export interface RodOrder {
  /** What the closed drapery covers, from its left end to its right end. */
  readonly width?: Length
  /** How far it reaches past the casing on the left. Left out: as far as on the right. */
  readonly pastLeft?: Length
  /** The intended height of the top of the rod above the floor, where the floor under the drapery is highest. */
  readonly top?: Length
  /** The intended height of the top of the rod above the top of the casing. */
  readonly aboveCasing?: Length
}

/** One panel, as the workroom made it. */
export interface Panel {
  /** A short name, unique in the treatment. */
  readonly id: Id
  /** What its bag is labelled. */
  readonly bag?: string
  /** From header to hem along the leading edge, the panel lying flat. */
  readonly finishedLength?: Length
  /** How many pleats it has. */
  readonly pleats?: number
  /** From the first pleat to the last pleat. */
  readonly firstToLast?: Length
  /** From the leading edge to the first pleat. */
  readonly leadingFlat?: Length
  /** From the last pleat to the edge at the wall; 0 when it has no return. */
  readonly return?: Length
  /** The whole width of the panel before it is pleated. */
  readonly flatWidth?: Length
  /** The pin setting: from the top of the pin up to the top of the drapery. */
  readonly pin?: Length
  /** The top of the panel. */
  readonly heading?: Heading
}

/** The top of the panel. */
export interface Heading {
  /** The kind of pleat. */
  readonly kind?: 'pinch pleat' | 'tack pleat' | 'box pleat' | 'goblet pleat' | 'cartridge pleat'
  /** How high the heading is. */
  readonly height?: Length
}

/** What was found at this treatment that the order cannot hold. */
export interface TreatmentFound {}

/** What was found at this window that the order cannot hold. */
export interface WindowFound {}

/** A value read at the window. */
export interface Reading {
  /** The value, in the form that its place asks for. */
  readonly value: unknown
  /** Who read it. */
  readonly by?: string
  /** When it was read. */
  readonly when?: string
  /** What the tape stood on. */
  readonly on?: 'finished floor' | 'carpet brushed flat' | 'subfloor'
}
