// Generated from schema/job/1 by `npm run generate`.
import type { Length } from '@evenhem/length'

/**
 * A short name, unique in its list: small letters, digits and hyphens.
 */
export type Id = string

/**
 * One drapery job: what the workroom made, where it goes, and how it is meant to hang.
 */
export interface Job {
  /**
   * Where an editor finds this schema.
   */
  $schema?: string
  /**
   * The name and the version of this format.
   */
  format: 'evenhem-job/1'
  /**
   * The plugins that this job needs, each with the version of its part of the format.
   */
  uses?: {
    /**
     * The version of this plugin's part.
     */
    [k: string]: number
  }
  /**
   * What a length without a unit is in.
   */
  units: 'in' | 'mm' | 'cm'
  job: JobHead
  /**
   * The fabrics of this job.
   */
  fabrics?: Fabric[]
  /**
   * The hardware of this job: rods, tracks and what belongs to them.
   */
  hardware?: Hardware[]
  /**
   * The rooms, in walking order.
   */
  rooms: Room[]
  /**
   * Readings already taken, by the place that they are a reading of. A reading takes the place of what was ordered; the order stays as it is.
   */
  found?: {
    [k: string]: Reading
  }
  with?: With
}
/**
 * What is said once about the whole job.
 */
export interface JobHead {
  /**
   * The workroom's number of this job.
   */
  number: string
  /**
   * What people call this job.
   */
  name: string
  /**
   * The country of the site, two letters (ISO 3166-1). It picks the safety rules.
   */
  country: string
  customer?: Party
  site?: Site
  workroom?: Workroom
  measured?: Measured
  /**
   * The day of the installation.
   */
  install?: string
  /**
   * What whoever opens this job should know first.
   */
  note?: string
}
/**
 * A person or a firm.
 */
export interface Party {
  /**
   * The name.
   */
  name: string
  /**
   * The telephone number.
   */
  phone?: string
  /**
   * The e-mail address.
   */
  email?: string
}
/**
 * Where the draperies go.
 */
export interface Site {
  /**
   * The address.
   */
  address?: string
  /**
   * How to get in: keys, parking, pets.
   */
  access?: string
}
/**
 * Who made the draperies, and the rules they work by.
 */
export interface Workroom {
  /**
   * The name of the workroom.
   */
  name: string
  /**
   * Whom to call from the ladder.
   */
  phone?: string
  /**
   * The e-mail address.
   */
  email?: string
  rules?: Rules
}
/**
 * Settings of the workroom. What is not said here is the trade's default.
 */
export interface Rules {
  /**
   * How far the two ways to the rod's height may differ. Default 1/8 in.
   */
  heightsAgree?: Length
  /**
   * How much narrower than the projection a return may be. Default 1/8 in.
   */
  returnShort?: Length
  /**
   * How much wider than the projection a return may be before it is looked at. Default 1/2 in.
   */
  returnOver?: Length
  /**
   * How far a panel's first to last may differ from its place on the rod. Default 1/2 in.
   */
  widthOff?: Length
  /**
   * How far a finished length may differ from the order. Default 1/4 in.
   */
  lengthOff?: Length
  /**
   * How far the two finished lengths of a pair may differ. Default 1/8 in.
   */
  pairOff?: Length
}
/**
 * Who measured for the order, and when.
 */
export interface Measured {
  /**
   * Who measured.
   */
  by?: string
  /**
   * The day it was measured.
   */
  date?: string
  /**
   * What the tape stood on.
   */
  on?: 'finished floor' | 'carpet brushed flat' | 'subfloor'
}
/**
 * A fabric of this job.
 */
export interface Fabric {
  id: Id
  /**
   * What people call it.
   */
  name: string
  /**
   * What it is made of.
   */
  fibres?: Fibre[]
  /**
   * What it is lined with; leave it out when it is not lined.
   */
  lining?: string
  with?: With
}
/**
 * A fibre and its share.
 */
export interface Fibre {
  /**
   * The fibre.
   */
  fibre: string
  /**
   * Its share of the weight.
   */
  percent?: number
}
/**
 * Parts that plugins add, by the name of the plugin.
 */
export interface With {
  [k: string]: {}
}
/**
 * An entry of hardware. What else it holds depends on its kind.
 */
export interface Hardware {
  id: Id
  /**
   * The sort of hardware; a plugin knows what belongs to it.
   */
  kind: string
  /**
   * What people call it.
   */
  name: string
}
/**
 * A room.
 */
export interface Room {
  id: Id
  /**
   * What people call it.
   */
  name: string
  /**
   * From the level line up to the ceiling.
   */
  ceiling?: Length
  /**
   * What the floor is.
   */
  floor?: 'wood' | 'tile' | 'stone' | 'vinyl' | 'carpet' | 'concrete' | 'unfinished'
  /**
   * The windows, from left to right as one walks.
   */
  windows: Window[]
  with?: With
}
/**
 * What one set of treatments dresses. Lengths along the wall run to the right from the left edge of the casing; heights run up from the level line, which passes through the floor where its points say 0.
 */
export interface Window {
  id: Id
  /**
   * What people call it.
   */
  name: string
  /**
   * The walls, from left to right.
   */
  walls: Wall[]
  /**
   * Points of the floor under the window. Without any, the floor is the level line.
   */
  floor?: FloorPoint[]
  /**
   * What hangs here, from the glass outward.
   */
  treatments: Treatment[]
  found?: WindowFound
  with?: With
}
/**
 * A wall with its openings.
 */
export interface Wall {
  id: Id
  space?: WallSpace
  buildUp?: BuildUp
  baseboard?: Baseboard
  /**
   * The openings, from left to right.
   */
  openings: Opening[]
}
/**
 * What is free at the height of the rod, from the casing outward.
 */
export interface WallSpace {
  /**
   * Free wall to the left of the casing.
   */
  left?: Length
  /**
   * Free wall to the right of the casing.
   */
  right?: Length
}
/**
 * What the wall is made of, from the room inward.
 */
export interface BuildUp {
  /**
   * What the screw meets first.
   */
  surface?: 'wallboard' | 'plaster' | 'masonry' | 'concrete' | 'wood' | 'tile'
  /**
   * How thick that is.
   */
  board?: Length
  /**
   * What is behind it where the brackets go.
   */
  behind?: 'wood' | 'metal' | 'hollow' | 'masonry' | 'concrete' | 'unknown'
}
/**
 * The board along the floor.
 */
export interface Baseboard {
  /**
   * How high it is.
   */
  height?: Length
  /**
   * How far it stands out from the wall.
   */
  thickness?: Length
}
/**
 * A window or a door in the wall.
 */
export interface Opening {
  id: Id
  casing?: Casing
  sill?: Sill
}
/**
 * The frame on the wall around the opening, measured outside.
 */
export interface Casing {
  /**
   * From its left outside edge to its right outside edge.
   */
  width?: Length
  /**
   * From the level line up to its top edge.
   */
  top?: Length
  /**
   * From the level line up to its lowest edge; 0 for a door.
   */
  bottom?: Length
  /**
   * How wide its boards are.
   */
  board?: Length
  /**
   * How far it stands out from the wall.
   */
  thickness?: Length
}
/**
 * The stool below the sash.
 */
export interface Sill {
  /**
   * From the level line up to its top.
   */
  top?: Length
  /**
   * How far it stands out from the wall.
   */
  depth?: Length
}
/**
 * A point of the floor.
 */
export interface FloorPoint {
  id: Id
  /**
   * Along the wall from the left edge of the casing; to the left is negative.
   */
  x: Length
  /**
   * Above the level line; below it is negative.
   */
  y: Length
}
/**
 * Draperies on one rod.
 */
export interface Treatment {
  id: Id
  hardware: Id
  fabric?: Id
  /**
   * How it opens: a pair opens to both sides.
   */
  draw: 'pair'
  rod?: RodOrder
  /**
   * From the floor up to the hem.
   */
  clearance?: Length
  /**
   * The panels, from left to right.
   */
  panels: Panel[]
  found?: TreatmentFound
  with?: With
}
/**
 * Where the rod is meant to be.
 */
export interface RodOrder {
  /**
   * What the closed drapery covers, from its left end to its right end.
   */
  width?: Length
  /**
   * How far it reaches past the casing on the left. Left out: as far as on the right.
   */
  pastLeft?: Length
  /**
   * The intended height of the top of the rod above the floor, where the floor under the drapery is highest.
   */
  top?: Length
  /**
   * The intended height of the top of the rod above the top of the casing.
   */
  aboveCasing?: Length
}
/**
 * One panel, as the workroom made it.
 */
export interface Panel {
  id: Id
  /**
   * What its bag is labelled.
   */
  bag?: string
  /**
   * From header to hem along the leading edge, the panel lying flat.
   */
  finishedLength?: Length
  /**
   * How many pleats it has.
   */
  pleats?: number
  /**
   * From the first pleat to the last pleat.
   */
  firstToLast?: Length
  /**
   * From the leading edge to the first pleat.
   */
  leadingFlat?: Length
  /**
   * From the last pleat to the edge at the wall; 0 when it has no return.
   */
  return?: Length
  /**
   * The whole width of the panel before it is pleated.
   */
  flatWidth?: Length
  /**
   * The pin setting: from the top of the pin up to the top of the drapery.
   */
  pin?: Length
  heading?: Heading
}
/**
 * The top of the panel.
 */
export interface Heading {
  /**
   * The kind of pleat.
   */
  kind?: 'pinch pleat' | 'tack pleat' | 'box pleat' | 'goblet pleat' | 'cartridge pleat'
  /**
   * How high the heading is.
   */
  height?: Length
}
/**
 * What was found at this treatment that the order cannot hold.
 */
export interface TreatmentFound {}
/**
 * What was found at this window that the order cannot hold.
 */
export interface WindowFound {}
/**
 * A value read at the window.
 */
export interface Reading {
  /**
   * The value, in the form that its place asks for.
   */
  value: {
    [k: string]: unknown
  }
  /**
   * Who read it.
   */
  by?: string
  /**
   * When it was read.
   */
  when?: string
  /**
   * What the tape stood on.
   */
  on?: 'finished floor' | 'carpet brushed flat' | 'subfloor'
}
