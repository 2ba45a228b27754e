// Generated from schema/job/1 by `npm run generate`.
import type { Length } from '@evenhem/length'

/**
 * Places of the pen: from the left, from the top, from the left, from the top, and so on.
 *
 * Items: A share of the width or the height of the field.
 */
export type Stroke = readonly number[]
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
  /** Catalogue files beside this job, from which entries of hardware and fabrics are taken. */
  readonly catalogues?: readonly CatalogueFile[]
  /** The fabrics of this job. */
  readonly fabrics?: readonly Fabric[]
  /** The hardware of this job: rods, tracks and what belongs to them. */
  readonly hardware?: readonly Hardware[]
  /** What brackets are fixed with on this job. The first one that fits the wall is reckoned with. */
  readonly fasteners?: readonly Fastener[]
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
  /** Who approved the order before it was made, and when. */
  readonly approved?: Approved
  /** Who measured for the order, and when. */
  readonly measured?: Measured
  /** The day of the installation. */
  readonly install?: string
  /** What is left with the customer, and what was agreed about it. */
  readonly handOver?: HandOver
  /** What whoever opens this job should know first. */
  readonly note?: string
  /** What was found of the whole job that the order cannot hold. */
  readonly found?: JobFound
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
  /** Who opens the door. */
  readonly contact?: Party
  /** When the house was built. Paint from before 1978 may hold lead. */
  readonly yearBuilt?: number
  /** A public place: what people reach and what may burn follow other rules there. */
  readonly public?: boolean
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
  /** How far a finished length over 108 in may differ from the order. Default twice `lengthOff`. */
  readonly longOff?: Length
  /** How far an opening may measure otherwise than the order says before it is looked at. Default 1/8 in. */
  readonly openingOff?: Length
  /** How far the pins of the panels of a pair may be set apart. Default what `pairOff` is. */
  readonly pinsPair?: Length
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
  /** How near an obstacle that names no distance of its own hardware and cloth may come. Default 0. */
  readonly obstacleGap?: Length
  /** How far hem and cloth keep from a hydronic heater that names no distance of its own. Default 6 in. */
  readonly heaterGap?: Length
  /** How far the cloth must pass in front of a stool that it hangs past. Default 1 in. */
  readonly stoolGap?: Length
  /** How far a bracket's plate must keep from the edge of a casing, wholly on it or wholly off it. Default 0. */
  readonly bracketEdge?: Length
  /** How much must be free above the rod to lift it into its brackets. Default 3/8 in. */
  readonly liftIn?: Length
  /** Spaces between pleats that are wider than this are looked at. Default 5 in. */
  readonly spaceMost?: Length
  /** How far the spaces of the two panels of a pair may differ. Default 1/4 in. */
  readonly spacesAgree?: Length
  /** How far rods and hems of one room may differ. Default 1/8 in. */
  readonly roomHeights?: Length
  /** How far from the middle of a support a splice may be. Default 2 in. */
  readonly splicePlace?: Length
  /** The largest sag of a rod between two brackets, as a part of the way between them: 240 is one part in 240. No published limit for rods is known. Default 240, a choice of ours. */
  readonly sagOf?: number
  /** Work above this height takes two people or a tower. Default 10 ft. */
  readonly ladderHeight?: Length
  /** The shallowest pin setting. Default 1/4 in. */
  readonly pinLeast?: Length
  /** The deepest pin setting. Default 3/4 in. */
  readonly pinMost?: Length
  /** How far a hem may hang from where it was ordered, at any place. Default 1/8 in. */
  readonly hemEven?: Length
  /** In which steps pins are set again; half of it is taken when only that brings a hem inside its tolerance. Default 1/8 in. */
  readonly pinStep?: Length
  /** How far the pins of two neighbouring hooks may differ. Default 1/8 in. */
  readonly pinsNext?: Length
  /** How far the pins of the two leading edges of a pair may differ. Default 1/16 in. */
  readonly pinsMeet?: Length
  /** How much of the heading stays below the deepest pin. Default 1/2 in. */
  readonly pinBelow?: Length
  /** How far a bracket moves at least, so that new screws hold beside the old holes. Default 3/8 in. */
  readonly holeBeside?: Length
  /** How wide the hole of an anchor is. Default 1/2 in. */
  readonly anchorHole?: Length
  /** How far a bracket in anchors moves at least, beyond the hole of an anchor. Default 1/4 in. */
  readonly anchorBeside?: Length
  /** How far a support may be off the line of the rod between the end brackets. Default 1/16 in. */
  readonly supportInLine?: Length
  /** After how many days somebody comes back to read the hem of cloth that settles. Default 14. */
  readonly lookAgainAfter?: number
  /** How far the inner layer keeps from the outer one. Default 2 in. */
  readonly layerGap?: Length
  /** How far folds that go back keep from the wall. Default 1/2 in. */
  readonly foldFree?: Length
  /** How much higher than the layer in front of it the hem of an unlined layer must be at least, so that it does not show below. Default 1/4 in. */
  readonly hemAboveLeast?: Length
  /** How much higher than the layer in front of it the hem of an unlined layer may be. Default 1/2 in. */
  readonly hemAboveMost?: Length
  /** How wide an open drapery stacks, both sides of a pair together, before it is measured: a part of the rod that it covers, of the casing's width or of the glass that is seen; by lining 10 % unlined, 15 % lined, 20 % blackout-lined, 25 % interlined. Never less than its rings or carriers side by side. Published rules differ fivefold. Default a third of the rod. */
  readonly stackBy?:
    | 'a third of the rod'
    | 'a third of the window'
    | 'a fifth of the window'
    | 'half of the window'
    | 'of the window by lining'
    | 'a third of the glass'
    | 'three tenths of the glass'
  /** How near to the rod a line must be for an eye to compare the two. Default 12 in. */
  readonly eyeReach?: Length
  /** How far a rod may be out of level in 6 ft before it is looked at. Default 1/2 in. */
  readonly rodLevel?: Length
  /** How far a fixed bracket may be from its mark. Default 1/16 in. */
  readonly markOff?: Length
  /** What fullness multiplies: the whole finished width, returns and overlap with it, or only what the panel covers, its return being added as it is. Published sources differ. Default finished width. */
  readonly fullnessOf?: 'finished width' | 'covered width'
  /** What fullness in per cent means: 200 per cent of the width is twice as much cloth, 200 per cent beyond it three times. Published sources differ. Default of the width. */
  readonly percentMeans?: 'of the width' | 'beyond the width'
  /** How a number of fabric widths is rounded: up to a whole width, up to a half width, or to the nearest whole width. Published sources differ. Default up. */
  readonly widthsRounded?: 'up' | 'half up' | 'nearest'
  /** Whether widths are rounded for each panel alone or once for all panels of a treatment, which then share one. Published sources differ. Default each panel. */
  readonly widthsOf?: 'each panel' | 'all panels'
  /** Which length must be a whole number of repeats: the cut length with its allowances, or the finished length, whose rest then gives the hems. Published sources differ. Default cut length. */
  readonly repeatOf?: 'cut length' | 'finished length'
  /** How a repeat lengthens a cut: up to a whole number of repeats, or by one repeat whatever the length. Default whole repeats. */
  readonly repeatBy?: 'whole repeats' | 'one repeat a cut'
  /** What a half-drop match adds: half a repeat once where the rest of a cut is less than that, one repeat once, or half a repeat on every second cut. Published sources differ. Default half a repeat once. */
  readonly halfDrop?: 'half a repeat once' | 'one repeat once' | 'half a repeat on alternate cuts'
  /** What is added once to the order of a fabric with a repeat, for placing its pattern; of a yard and a repeat the longer. Published sources differ. Default nothing. */
  readonly placing?: 'nothing' | 'one repeat' | 'a yard or a repeat'
  /** The step in which suppliers sell cloth: an order is rounded up to it. Default any length. */
  readonly soldBy?: 'any length' | 'quarter yard' | 'third of a yard' | 'half yard' | 'yard' | 'half metre' | 'metre'
  /** How many layers of cloth the bottom hem takes: 2 for a double hem. Default 2. */
  readonly hemTurns?: number
  /** How many times its height the heading takes of the cloth: 2 when it is turned over the stiffening and under. Default 2. */
  readonly headingTurns?: number
  /** How many layers of cloth a side hem takes. Default 2. */
  readonly sideHemTurns?: number
  /** What a joining seam takes off each edge of a width. Default 1/2 in. */
  readonly seam?: Length
  /** What is cut longer than finished length, hem and heading, to work with. Default 0. */
  readonly cutExtra?: Length
  /** How much shorter than the fabric the lining is cut. Default 3 in. */
  readonly liningShorter?: Length
  /** How much narrower than the fabric the lining of a panel is cut. Default 0. */
  readonly liningNarrower?: Length
  /** How much shorter than the fabric the interlining is cut. Default 0. */
  readonly interliningShorter?: Length
  /** How much narrower than the fabric the interlining of a panel is cut. Default 0. */
  readonly interliningNarrower?: Length
  /** How much narrower than its fullness asks for a panel's flat width may be before it is looked at. Default 2 in. */
  readonly flatShort?: Length
}

/** Who approved the order before it was made, and when. */
export interface Approved {
  /** Who approved it. */
  readonly by?: string
  /** The day it was approved. */
  readonly date?: string
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

/** What is left with the customer, and what was agreed about it. */
export interface HandOver {
  /**
   * What is left as a spare, in words: two rings, a touch-up stick.
   *
   * Items: One thing that is left.
   */
  readonly spares?: readonly string[]
  /** How many remote controls are handed over. */
  readonly remotes?: number
  /** Who may work the draperies, where not everybody may. */
  readonly mayUse?: string
  /** Who sees to the points that are left open. */
  readonly openPoints?: string
}

/** What was found of the whole job that the order cannot hold. */
export interface JobFound {
  /** Signatures, each under a name of its own: put by the log, each as one value. */
  readonly signatures?: {
    readonly [k: string]: Signature
  }
}

/** A signature under a job that is done. */
export interface Signature {
  /** As whom somebody signed. */
  readonly role: 'customer' | 'installer'
  /** The name of who signed. */
  readonly name: string
  /** What the customer accepts. An installer's signature leaves it out. */
  readonly accepts?: 'without open points' | 'with open points'
  /** The signature as it was drawn, a stroke after the other; empty where it was typed. */
  readonly strokes: readonly Stroke[]
  /** Whether it was signed by typing the name. */
  readonly typed?: boolean
  /** What was left with the customer, in words: spares, remote controls. */
  readonly left?: string
  /** What was signed, so that a change is found. */
  readonly seal: Seal
}

/** What was there when somebody signed. Hashes are SHA-256 in small hexadecimal digits. */
export interface Seal {
  /** The hash of the bytes of job.json. */
  readonly job: string
  /** The last line that was there of each device, by the device. */
  readonly devices: {
    readonly [k: string]: SealedLine
  }
  /** The hash of the names of all photos that these lines name, sorted and joined by line feeds. */
  readonly photos: string
  /** The hash of all the rest of the signature as JSON without spaces, its members and those of the seal in the order of this schema. */
  readonly signature?: string
}

/** A line of the log. */
export interface SealedLine {
  /** Its number. */
  readonly n: number
  /** The hash of the line without its end. */
  readonly hash: string
}

/** A catalogue file. */
export interface CatalogueFile {
  /** The short name by which entries use it. */
  readonly id: Id
  /** Where it is, from the folder of this job: in it, or in the folder that holds it (`../catalogue.json`). */
  readonly file: string
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
  /** What lies between fabric and lining; leave it out when nothing does. */
  readonly interlining?: string
  /** What it weighs by its area, such as `320 g/m2` or `9.5 oz/yd2`. */
  readonly weight?: string
  /** From selvedge to selvedge. With it the cloth of this job is counted. */
  readonly width?: Length
  /** The step in which this fabric is sold. Left out: what the workroom's rule says. */
  readonly soldBy?: 'any length' | 'quarter yard' | 'third of a yard' | 'half yard' | 'yard' | 'half metre' | 'metre'
  /** By how many per cent the cloth grows longer once it hangs. */
  readonly settling?: number
  /** The repeat of the pattern. */
  readonly repeat?: Repeat
  /** The dye lot or batch. */
  readonly lot?: string
  /** The certificate that it came with, for instance of how it burns. */
  readonly certificate?: string
  /** Where this entry was taken from. */
  readonly catalogue?: Catalogue
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

/** The repeat of the pattern. */
export interface Repeat {
  /** From one motif to the next, upward. */
  readonly vertical?: Length
  /** From one motif to the next, sideways. */
  readonly horizontal?: Length
  /** The upward repeat of the cloth that came, where it was measured. */
  readonly received?: Length
  /** How motifs meet from one width to the next: at one height, or half a repeat lower. Default straight. */
  readonly match?: 'straight' | 'half drop'
}

/** Where this entry was taken from. With a catalogue of this job and without members of its own the entry is what the catalogue says; with members of its own it is a frozen copy, which wins. */
export interface Catalogue {
  /** The name of the catalogue. */
  readonly name?: string
  /** The catalogue of this job that holds it, by its short name under `catalogues`. */
  readonly from?: Id
  /** The number or name of the item in it; of a catalogue of this job its id there. Left out: the id is the same. */
  readonly item?: string
  /** The day of the catalogue. */
  readonly date?: string
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
  /** Where this entry was taken from. */
  readonly catalogue?: Catalogue
}

/** What a bracket is fixed with, into one sort of wall. */
export interface Fastener {
  /** The short name by which treatments use it. */
  readonly id: Id
  /** What people call it, as it stands on its box. */
  readonly name: string
  /** What it holds in: a stud or block of wood, a metal stud, the board itself with nothing behind it, masonry or concrete. */
  readonly into: 'wood' | 'metal' | 'hollow' | 'masonry' | 'concrete'
  /** A wood screw or lag screw holds in wood by published equations; anything else, and anything in another wall, only by its own listing. */
  readonly as: 'wood screw' | 'lag screw' | 'listed'
  /** The number of a wood screw, such as 8. */
  readonly number?: number
  /** Its diameter over the thread, where it has no number. */
  readonly diameter?: Length
  /** How long it is, without a raised head. */
  readonly length?: Length
  /** How much of its length is threaded. Left out: two thirds. */
  readonly thread?: Length
  /** What its maker or a test report lists for this wall. */
  readonly listing?: Listing
}

/** What its maker or a test report lists for this wall. */
export interface Listing {
  /** Whether the loads may be put on it, or broke it in a test. */
  readonly is: 'allowable' | 'ultimate'
  /** Straight out of the wall, such as `180 N` or `40 lbf`. */
  readonly pull?: string
  /** Along the wall. */
  readonly shear?: string
  /** What an ultimate load is divided by; the listing or the code says it. Without it an ultimate load is not used. */
  readonly margin?: number
  /** The board that it is listed for, when it holds in a board. */
  readonly board?: Length
  /** Where that stands: the sheet or report and its date. */
  readonly from: string
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
  /** How high the carpet's pile stands when it is brushed up. */
  readonly pile?: Length
  /**
   * What may differ between the windows of this room; everything else is compared.
   *
   * Items: Something that is meant to differ.
   */
  readonly mayDiffer?: readonly ('rods' | 'hems' | 'patterns')[]
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
  /** The walls, from left to right. All lengths along the wall run on from the left edge of the first casing, around corners too. */
  readonly walls: readonly Wall[]
  /** Points of the floor under the window. Without any, the floor is the level line. */
  readonly floor?: readonly FloorPoint[]
  /** What the points of the floor were measured on. */
  readonly floorOn?: 'finished floor' | 'carpet brushed flat' | 'subfloor'
  /** Points of the ceiling over the window. Without any, the room's ceiling holds. */
  readonly ceiling?: readonly LevelPoint[]
  /** What is above the ceiling where brackets go. */
  readonly aboveCeiling?: 'wood' | 'metal' | 'hollow' | 'concrete' | 'unknown'
  /** What has to go first. */
  readonly before?: Before
  /** What hangs here, from the glass outward. */
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
  /** From its left end to its right end. */
  readonly width?: Length
  /** Where the wall begins, along the wall from the left edge of the casing: in a corner or at an edge. */
  readonly left?: Length
  /** The angle to the next wall, in degrees, seen from the room: 90 in an inside corner, 270 around an outside one. Left out: not measured. */
  readonly corner?: number
  /** What is free at the height of the rod, from the casing outward. */
  readonly space?: WallSpace
  /** What the wall is made of, from the room inward. */
  readonly buildUp?: BuildUp
  /** The board along the floor. */
  readonly baseboard?: Baseboard
  /** The moulding where wall and ceiling meet. */
  readonly crown?: Crown
  /** Studs or blocking that are known. */
  readonly studs?: readonly Stud[]
  /** What is in the way or must stay clear. */
  readonly obstacles?: readonly Obstacle[]
  /** The openings, from left to right. A wall of a bay may have none. */
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
  /** The species group of studs and blocks, as it is stamped on them. Left out: one of the lightest is reckoned. */
  readonly wood?:
    | 'Douglas Fir-Larch'
    | 'Southern Pine'
    | 'Spruce-Pine-Fir'
    | 'Spruce-Pine-Fir (South)'
    | 'Hem-Fir'
    | 'Western Cedars'
    | 'Red Oak'
    | 'White Oak'
    | 'Eastern White Pine'
    | 'Yellow Poplar'
    | 'Ponderosa Pine'
    | 'Redwood'
  /** What is on the surface. */
  readonly finish?: 'paint' | 'paper' | 'tile' | 'panelling' | 'bare'
}

/** The board along the floor. */
export interface Baseboard {
  /** How high it is. */
  readonly height?: Length
  /** How far it stands out from the wall. */
  readonly thickness?: Length
}

/** The moulding where wall and ceiling meet. */
export interface Crown {
  /** From the level line up to its lowest edge. */
  readonly bottom?: Length
  /** How far it stands out from the wall at its top. */
  readonly projection?: Length
}

/** A stud or a piece of blocking. */
export interface Stud {
  /** A short name, unique on the wall. */
  readonly id: Id
  /** Its middle, along the wall from the left edge of the casing. */
  readonly x: Length
}

/** Something on the wall, on the ceiling or in front of it that hardware and cloth must keep from. */
export interface Obstacle {
  /** A short name, unique on the wall. */
  readonly id: Id
  /** What it is. */
  readonly kind:
    | 'switch'
    | 'thermostat'
    | 'outlet'
    | 'detector'
    | 'sprinkler head'
    | 'diffuser'
    | 'grille'
    | 'register'
    | 'electric heater'
    | 'hydronic heater'
    | 'old hardware'
    | 'door swing'
    | 'pipe'
    | 'other'
  /** What people call it, where its kind does not say enough. */
  readonly name?: string
  /** Its left edge, along the wall from the left edge of the casing. */
  readonly left?: Length
  /** From the level line up to its lowest edge. */
  readonly bottom?: Length
  /** How wide it is. */
  readonly width?: Length
  /** How high it is. */
  readonly height?: Length
  /** How far it stands out from the wall. */
  readonly depth?: Length
  /** How far hardware and cloth must keep from it. */
  readonly keepOff?: Length
}

/** A window or a door in the wall. */
export interface Opening {
  /** A short name, unique in the wall. */
  readonly id: Id
  /** Where its casing begins, from the left edge of the first casing. The first one's is 0 and is left out. */
  readonly x?: Length
  /** The frame on the wall around the opening, measured outside. */
  readonly casing?: Casing
  /** Points of the top edge of the casing, where it was read at more places than one. Without any, the casing's top holds all along. */
  readonly head?: readonly LevelPoint[]
  /** The opening between its jambs. */
  readonly inside?: Inside
  /** The glass that is seen. */
  readonly glass?: Glass
  /** The stool below the sash. */
  readonly sill?: Sill
  /** The board below the stool. */
  readonly apron?: Apron
  /** How the sash or the door opens. */
  readonly opens?: 'not' | 'in' | 'out' | 'up' | 'sideways'
  /** What of the opening comes into the room when it is open. */
  readonly swing?: Swing
  /** How far its handle stands out from the wall. */
  readonly handle?: Length
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

/** A height at a place along the wall. */
export interface LevelPoint {
  /** A short name, unique among the points. */
  readonly id: Id
  /** Along the wall from the left edge of the casing; to the left is negative. */
  readonly x: Length
  /** Above the level line. */
  readonly y: Length
}

/** The opening between its jambs. */
export interface Inside {
  /** From the left edge of the casing to the left jamb. */
  readonly fromLeft?: Length
  /** From jamb to jamb. */
  readonly width?: Length
  /** From the level line up to the head. */
  readonly top?: Length
  /** From the level line up to the stool or the threshold. */
  readonly bottom?: Length
}

/** The glass that is seen. */
export interface Glass {
  /** From the left edge of the casing to the visible glass. */
  readonly fromLeft?: Length
  /** Between its visible edges. */
  readonly width?: Length
}

/** The stool below the sash. */
export interface Sill {
  /** From the level line up to its top. */
  readonly top?: Length
  /** How far it stands out from the wall. */
  readonly depth?: Length
}

/** The board below the stool. */
export interface Apron {
  /** From the level line up to its lowest edge. */
  readonly bottom?: Length
}

/** What of the opening comes into the room when it is open. */
export interface Swing {
  /** From the level line up to the top of what swings in. */
  readonly top?: Length
  /** From the level line up to the bottom of what swings in. */
  readonly bottom?: Length
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

/** What has to go first. */
export interface Before {
  /** The old treatment that is taken down. */
  readonly remove?: string
  /** Holes to patch, and who patches them. */
  readonly patch?: string
}

/** Draperies on one rod. */
export interface Treatment {
  /** A short name, unique in the window. */
  readonly id: Id
  /** The entry under `hardware` that it hangs on. */
  readonly hardware: Id
  /** The entry under `fabrics` that it is made of. */
  readonly fabric?: Id
  /** The entry under `fabrics` that it is lined with, for counting the cloth. Left out: none is counted. */
  readonly lining?: Id
  /** The entry under `fabrics` that lies between fabric and lining, for counting the cloth. Left out: none is counted. */
  readonly interlining?: Id
  /** How many times its width the cloth of a panel is wide: 2.5 is two and a half times. */
  readonly fullness?: number
  /** The same in per cent, where the order says it so; the workroom's rule `percentMeans` says what it means. `fullness` goes before it. */
  readonly fullnessPercent?: number
  /** What is cut beyond the finished sizes, where it does not follow from the hems and headings of the panels. */
  readonly cutting?: Cutting
  /** How it opens. A pair opens to both sides; one-way left gathers at the left end; stationary panels stay where they hang. */
  readonly draw: 'pair' | 'one-way left' | 'one-way right' | 'stationary'
  /** Where the bracket at the leading end of a one-way draw stands: like the other one, so that the ends look alike, or further out, so that the cloth reaches the end of what it covers. Default symmetric. */
  readonly leadingEnd?: 'symmetric' | 'reach'
  /** What the brackets are fixed to. Default wall. */
  readonly mount?: 'wall' | 'casing' | 'crown' | 'ceiling' | 'inside' | 'side walls'
  /** What the hem is measured from: the floor; the top of the stool, above which it ends; the bottom of the apron, below which it ends. Default floor. */
  readonly hemAt?: 'floor' | 'sill' | 'apron'
  /** The customer wants cloth that lies on the floor also where it is drawn. */
  readonly breakAgreed?: boolean
  /**
   * The ids of the openings that it covers. Left out: all of them.
   *
   * Items: An opening.
   */
  readonly openings?: readonly Id[]
  /** Where the rod is meant to be. */
  readonly rod?: RodOrder
  /** From the wall to where the hooks bear, where the brackets of this treatment are set otherwise than the hardware says. */
  readonly projection?: Projections
  /** How far the leading edges of a pair lie over one another when it is drawn. Left out: they meet edge to edge. */
  readonly overlap?: Length
  /** From the floor up to the hem; negative when the cloth breaks on it. At a sill: from the stool up to the hem. At an apron: from its bottom down to the hem. */
  readonly clearance?: Length
  /** The panels, from left to right. A pair has two, a one-way draw one. */
  readonly panels: readonly Panel[]
  /** The treatment whose double brackets carry this rod too. Left out: it has brackets of its own. */
  readonly bracketsOf?: Id
  /** The entries under `fasteners` that its brackets are fixed with. Left out: all of them. */
  readonly fasteners?: readonly Id[]
  /** How much of the glass is meant to be clear when the drapery is open. */
  readonly clearGlass?: Length
  /** How it is drawn. */
  readonly operation?: Operation
  /** The hooks of the panels. */
  readonly hooks?: Hooks
  /** What was found at this treatment that the order cannot hold. */
  readonly found?: TreatmentFound
  /** What plugins add to a treatment. */
  readonly with?: With
}

/** What is cut beyond the finished sizes, where it does not follow from the hems and headings of the panels. */
export interface Cutting {
  /** For the bottom hem, all its layers together. Left out: the panel's hem times the workroom's `hemTurns`. */
  readonly hem?: Length
  /** For the heading, all its layers together. Left out: the height of the heading times the workroom's `headingTurns`. */
  readonly heading?: Length
  /** All that a cut is longer than the finished length, in place of hem, heading and the workroom's `cutExtra`. */
  readonly length?: Length
  /** For both side hems of a panel together. Left out: twice the panel's side hem times the workroom's `sideHemTurns`. */
  readonly sideHems?: Length
}

/** Where the rod is meant to be. */
export interface RodOrder {
  /** What the closed drapery covers, from its left end to its right end. It may be left out where it is said how far the rod passes the casing on both sides. */
  readonly width?: Length
  /** How far it reaches past the casing on the left. Left out: as far as on the right. */
  readonly pastLeft?: Length
  /** How far it reaches past the casing on the right. */
  readonly pastRight?: Length
  /** Where a pair meets, from the left edge of the casing. Left out: in the middle of what is covered. */
  readonly middle?: Length
  /** The intended height of the top of the rod above the floor, where the floor under the drapery is highest. */
  readonly top?: Length
  /** The intended height of the top of the rod above the top of the casing. */
  readonly aboveCasing?: Length
  /** The intended distance from the ceiling down to the top of the rod. */
  readonly belowCeiling?: Length
  /** How far the top of the drapery is meant to stand above the top of the rod; below it is negative. */
  readonly headingAbove?: Length
  /** How long the rod was cut, without finials. */
  readonly cut?: Length
  /** Of a rod that is pushed together: where its thinner tube is alone. */
  readonly thin?: ThinPart
  /** Where the pieces of the rod meet. */
  readonly splices?: readonly Splice[]
  /** The supports between the end brackets. Left out: none. */
  readonly supports?: readonly Support[]
}

/** Of a rod that is pushed together: where its thinner tube is alone. */
export interface ThinPart {
  /** From the left end of the rod to where the thicker tube ends. */
  readonly from: Length
  /** From the left end of the rod to where a thicker tube begins again; the whole length where none does. */
  readonly to: Length
}

/** A place where two pieces of the rod meet. */
export interface Splice {
  /** A short name, unique on this rod. */
  readonly id: Id
  /** From the left end of the rod to the splice. */
  readonly fromLeft: Length
}

/** A support between the end brackets. */
export interface Support {
  /** A short name, unique on this rod. */
  readonly id: Id
  /** Its middle, along the wall from the left edge of the casing. */
  readonly x: Length
}

/** From the wall to where the hooks bear, where the brackets of this treatment are set otherwise than the hardware says. */
export interface Projections {
  /** At the left end. */
  readonly left?: Length
  /** At the right end. */
  readonly right?: Length
}

/** One panel, as the workroom made it. */
export interface Panel {
  /** A short name, unique in the treatment. */
  readonly id: Id
  /** On which side its outer edge is. Left out: the first of a pair on the left, the second on the right; of stationary panels those in the left half on the left. */
  readonly outer?: 'left' | 'right'
  /** What its bag is labelled. */
  readonly bag?: string
  /** How much of the rod it is meant to cover. Left out: what follows from the draw. */
  readonly share?: Length
  /** Where its outer edge hangs, for a stationary panel. Left out: at the end of the rod on its side. */
  readonly at?: Length
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
  /** From the last pleat to the outer edge of a panel without a return. */
  readonly outerFlat?: Length
  /** The whole width of the panel before it is pleated. */
  readonly flatWidth?: Length
  /** The pin setting: from the top of the pin up to the top of the drapery. */
  readonly pin?: Length
  /** How high the stiffening of its heading is. */
  readonly buckram?: Length
  /** How high the bottom hem is. */
  readonly hem?: Length
  /** How wide the side hems are. */
  readonly sideHem?: Length
  /** Which side of the cloth faces the room, and how one tells. */
  readonly rightSide?: string
  /** From the top of the drapery down to where the pattern's repeat begins. */
  readonly patternStart?: Length
  /** Which way its pile lies on the panels. */
  readonly nap?: 'up' | 'down' | 'none'
  /**
   * Where widths are sewn together, from the leading edge of the flat panel.
   *
   * Items: From the leading edge to the seam.
   */
  readonly seams?: readonly Length[]
  /** What keeps the hem down. */
  readonly weights?: 'none' | 'corners' | 'corners and seams' | 'chain'
  /** What all weights in its hem weigh together, such as `120 g`. */
  readonly hemWeight?: string
  /** What the panel weighs with all that is sewn into it, such as `4.2 kg` or `9 lb`. */
  readonly weight?: string
  /** The top of the panel. */
  readonly heading?: Heading
}

/** The top of the panel. */
export interface Heading {
  /** The kind of pleat. */
  readonly kind?: 'pinch pleat' | 'tack pleat' | 'box pleat' | 'goblet pleat' | 'cartridge pleat' | 'inverted pleat' | 'pencil pleat'
  /** How high the heading is. */
  readonly height?: Length
}

/** How it is drawn. */
export interface Operation {
  /** What moves it. */
  readonly by: 'hand' | 'wand' | 'cord' | 'continuous loop' | 'motor'
  /** On which side that is. Default left. */
  readonly side?: 'left' | 'right'
  /** From the floor up to what people hold or press. */
  readonly handle?: Length
  /** How long a cord with a free end hangs within reach. */
  readonly freeCord?: Length
  /** From the floor up to the lowest point of the cord or the loop. */
  readonly lowest?: Length
  /** The motor. */
  readonly motor?: Motor
}

/** The motor. */
export interface Motor {
  /** Where its power comes from. */
  readonly power?: 'outlet' | 'hard-wired' | 'battery' | 'none'
  /** How long its cable is. */
  readonly lead?: Length
}

/** The hooks of the panels. */
export interface Hooks {
  /** What sort. */
  readonly kind?: 'pin-on' | 'slip-in' | 'sew-on' | 'clip'
  /** How thick their wire is. */
  readonly wire?: Length
  /** How many more were packed than are needed. */
  readonly spares?: number
}

/** What was found at this treatment that the order cannot hold. */
export interface TreatmentFound {
  /** Brackets, by the name of the bracket. */
  readonly brackets?: {
    readonly [k: string]: FoundBracket
  }
  /** Supports that were added on site, by a name. */
  readonly supports?: {
    readonly [k: string]: AddedSupport
  }
  /** Steps of this treatment that are done, by plugin and step. */
  readonly done?: {
    /** The steps of one plugin, each done or not. */
    readonly [k: string]: {
      /** Whether this step is done. */
      readonly [k: string]: boolean
    }
  }
  /** The bracket that is marked first and that the others are taken from: `left`, `right` or a support. Left out: the end bracket where the floor is higher, the left one where it is level. */
  readonly first?: Id
  /** Stops of this treatment that somebody lifted, each with the reason: by the code of the check, or by the code and what exactly it was about. Those of its window hold for all that hangs there. */
  readonly overrides?: {
    /** Why the work went on. */
    readonly [k: string]: string
  }
  /** How many came, by the code of the part. */
  readonly came?: {
    /** How many were counted. */
    readonly [k: string]: number
  }
  /** What was decided about a difference, by what it is about. */
  readonly decided?: {
    /** The decision. */
    readonly [k: string]: string
  }
  /** How far the drawn hem clears the floor, by panel; of a hem that ends above a stool or below an apron, how far it ends from that. */
  readonly hemsRead?: {
    /** Readings of one panel, by the number of the hook that they are below, counted from the leading edge. */
    readonly [k: string]: {
      /** From what the hem is measured from to the hem; lying on the floor negative. */
      readonly [k: string]: Length
    }
  }
  /** Pins as they were set again, by panel. */
  readonly pins?: {
    /** Pins of one panel, by the number of the hook, counted from the leading edge. */
    readonly [k: string]: {
      /** From the top of the pin up to the top of the drapery. */
      readonly [k: string]: Length
    }
  }
  /** What was proven and shown at the hand-over. */
  readonly shown?: Shown
  /** The day on which it was hung. */
  readonly hungOn?: string
  /** The day on which somebody comes back to read the hem again. */
  readonly lookAgain?: string
  /** How far the hem of a panel clears the floor, by panel. */
  readonly hems?: {
    /** From the floor up to the hem. */
    readonly [k: string]: Length
  }
  /** How wide a panel stacks when it is drawn aside, by panel. */
  readonly stacks?: {
    /** From the outer edge to the leading edge when it is open. */
    readonly [k: string]: Length
  }
  /** What was recorded of cords when the draperies hung. */
  readonly cord?: FoundCord
}

/** A bracket as it was found. */
export interface FoundBracket {
  /** The height of its top hole above the level line. */
  readonly hole?: Length
  /** Whether it is fixed for good. From then on no reading moves its mark. */
  readonly fixed?: boolean
  /** What the drill met behind the surface. */
  readonly behind?: 'wood' | 'metal' | 'hollow' | 'masonry' | 'concrete'
  /** The screws that were driven there, as their box has it: `No. 10 × 3`, or in millimetres `5 × 70`. */
  readonly screw?: string
  /** From the floor right below up to its top hole, as the tape says. */
  readonly floorToHole?: Length
  /** From the floor right below up to the top of the frame, read at this bracket. */
  readonly floorToHead?: Length
  /** From the floor right below up to the ceiling, read at this bracket. */
  readonly floorToCeiling?: Length
  /** From the floor right below up to a level line that was carried over from the top hole of the first bracket. */
  readonly floorToLevel?: Length
  /** What the rod follows on its way from the first bracket to this one, as somebody chose it. */
  readonly follows?: 'level' | 'head' | 'ceiling' | 'floor' | 'between'
}

/** A support that was added. */
export interface AddedSupport {
  /** Its middle, along the wall from the left edge of the casing. */
  readonly x?: Length
}

/** What was proven and shown at the hand-over. */
export interface Shown {
  /** It was drawn and opened five times and ran freely. */
  readonly drawnFiveTimes?: boolean
  /** The leading edges pass one another when it is drawn. */
  readonly overlapCloses?: boolean
  /** The hems are even. */
  readonly hemsEven?: boolean
  /** The finials are tight. */
  readonly finialsTight?: boolean
  /** The customer was shown the wand. */
  readonly wandShown?: boolean
  /** The customer was shown the motor and its remote control. */
  readonly motorShown?: boolean
  /** Spares and remote controls were left with the customer. */
  readonly sparesLeft?: boolean
  /** Nothing of the work was left lying about. */
  readonly rubbishGone?: boolean
}

/** What was recorded of cords when the draperies hung. */
export interface FoundCord {
  /** How the tension device of a loop was left. */
  readonly device?: 'fixed and proven' | 'not proven' | 'missing'
  /** From the floor up to the tension device. */
  readonly deviceHeight?: Length
  /** The way around the largest loop that can be pulled loose within reach. */
  readonly looseLoop?: Length
  /** The longest free cord within reach. */
  readonly freeCord?: Length
}

/** What was found at this window that the order cannot hold. */
export interface WindowFound {
  /** Steps that are done, by plugin and step. */
  readonly done?: {
    /** The steps of one plugin, each done or not. */
    readonly [k: string]: {
      /** Whether this step is done. */
      readonly [k: string]: boolean
    }
  }
  /** Stops that somebody lifted, by the code of the check, each with the reason. */
  readonly overrides?: {
    /** Why the work went on. */
    readonly [k: string]: string
  }
  /** What was decided about a difference of its openings, by what it is about. */
  readonly decided?: {
    /** The decision. */
    readonly [k: string]: string
  }
  /** Notes, each under a name of its own. */
  readonly notes?: {
    /** The note. */
    readonly [k: string]: string
  }
  /** Photos, each under the hash of its content, with what it shows. */
  readonly photos?: {
    /** What the photo shows. */
    readonly [k: string]: string
  }
  /** When a photo was taken, under its hash. */
  readonly photoOf?: {
    /** Before the work, the drapery closed or open, a detail, or after something was mended. */
    readonly [k: string]: 'before' | 'closed' | 'open' | 'detail' | 'after'
  }
  /** What was marked on a photo, under its hash: drawn over it, the photo stays as it is. */
  readonly photoMarks?: {
    /** Marks, each under a name of its own. */
    readonly [k: string]: {
      readonly [k: string]: MarkOnAPhoto
    }
  }
}

/** A mark on a photo. Places on it are shares of its width and height, from the left and from the top, the photo upright. */
export interface MarkOnAPhoto {
  /** A ring around a point, an arrow that ends there, an area from one corner to the other, or words. */
  readonly kind: 'point' | 'arrow' | 'area' | 'words'
  /** From the left: the point, where an arrow ends, a corner, or where words begin. */
  readonly x: number
  /** From the top. */
  readonly y: number
  /** Where an arrow begins, or the other corner of an area, from the left. */
  readonly toX?: number
  /** The same from the top. */
  readonly toY?: number
  /** What it says. */
  readonly says?: string
}

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
