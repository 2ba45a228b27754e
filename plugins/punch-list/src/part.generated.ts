// Generated from plugins/punch-list/src/part.schema.json by `npm run generate`.
/** What is left to mend: at a window what is wrong there, at the job what is wrong at no window. */
export interface PunchList {
  /** The points, each under a short name of its own. They are numbered in the order of these names. */
  readonly points?: {
    readonly [k: string]: Point
  }
}

/** One thing that is wrong. Each member is put by itself, so that none of them need be there; without `what` it is asked for. */
export interface Point {
  /** What is wrong, in words. */
  readonly what?: string
  /** What on the drawing it is about: the place of a panel, a bracket, an opening or a number, such as `/rooms/den/windows/w1/treatments/over/panels/left`. Left out: the window as a whole. */
  readonly at?: string
  /** The photo that shows it, by the hash of its content (SHA-256, 64 digits and letters a to f). */
  readonly photo?: string
  /** Where on that photo it is. */
  readonly spot?: Spot
  /** Where it comes from: how it was measured or made, the hardware, the wall, how it was installed, or the way here. */
  readonly cause?: 'measured' | 'made' | 'hardware' | 'wall' | 'installed' | 'damaged in transport' | 'other'
  /** Who has to see that it is mended. */
  readonly owner?: 'workroom' | 'installer' | 'other trade' | 'customer'
  /** Which other trade: painter, electrician. */
  readonly trade?: string
  /** Who of them, by name. */
  readonly who?: string
  /** The day by which it is to be mended. */
  readonly by?: string
  /** Whether somebody can be hurt by it. Nothing is handed over before it is mended and was looked at again, and no reason lifts that. */
  readonly unsafe?: boolean
  /** Photos of it as it was found. */
  readonly before?: Photos
  /** Photos of it mended. */
  readonly after?: Photos
  /** How it stands: open, mended, mended and looked at again, or accepted as it is by the customer. Left out: open. */
  readonly state?: 'open' | 'mended' | 'looked at' | 'accepted as it is'
  /** What else there is to know. */
  readonly note?: string
}

/** A place on a photo, in shares of its width and height, the photo upright. */
export interface Spot {
  /** From the left. */
  readonly x?: number
  /** From the top. */
  readonly y?: number
}

/** Photos, by the hash of their content. */
export interface Photos {
  /** Whether this photo belongs here. */
  readonly [k: string]: boolean
}

export const partSchema = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/punch-list/1/part.schema.json",
  "title": "PunchList",
  "description": "What is left to mend: at a window what is wrong there, at the job what is wrong at no window.",
  "type": "object",
  "properties": {
    "points": {
      "type": "object",
      "description": "The points, each under a short name of its own. They are numbered in the order of these names.",
      "additionalProperties": {
        "$ref": "#/$defs/point"
      }
    }
  },
  "unevaluatedProperties": false,
  "$defs": {
    "point": {
      "type": "object",
      "title": "Point",
      "description": "One thing that is wrong. Each member is put by itself, so that none of them need be there; without `what` it is asked for.",
      "properties": {
        "what": {
          "type": "string",
          "minLength": 1,
          "maxLength": 500,
          "description": "What is wrong, in words."
        },
        "at": {
          "type": "string",
          "pattern": "^/",
          "maxLength": 500,
          "description": "What on the drawing it is about: the place of a panel, a bracket, an opening or a number, such as `/rooms/den/windows/w1/treatments/over/panels/left`. Left out: the window as a whole."
        },
        "photo": {
          "type": "string",
          "pattern": "^[0-9a-f]{64}$",
          "description": "The photo that shows it, by the hash of its content (SHA-256, 64 digits and letters a to f)."
        },
        "spot": {
          "$ref": "#/$defs/spot",
          "description": "Where on that photo it is."
        },
        "cause": {
          "enum": [
            "measured",
            "made",
            "hardware",
            "wall",
            "installed",
            "damaged in transport",
            "other"
          ],
          "description": "Where it comes from: how it was measured or made, the hardware, the wall, how it was installed, or the way here."
        },
        "owner": {
          "enum": [
            "workroom",
            "installer",
            "other trade",
            "customer"
          ],
          "description": "Who has to see that it is mended."
        },
        "trade": {
          "type": "string",
          "minLength": 1,
          "maxLength": 200,
          "description": "Which other trade: painter, electrician."
        },
        "who": {
          "type": "string",
          "minLength": 1,
          "maxLength": 200,
          "description": "Who of them, by name."
        },
        "by": {
          "type": "string",
          "format": "date",
          "description": "The day by which it is to be mended."
        },
        "unsafe": {
          "type": "boolean",
          "description": "Whether somebody can be hurt by it. Nothing is handed over before it is mended and was looked at again, and no reason lifts that."
        },
        "before": {
          "$ref": "#/$defs/photos",
          "description": "Photos of it as it was found."
        },
        "after": {
          "$ref": "#/$defs/photos",
          "description": "Photos of it mended."
        },
        "state": {
          "enum": [
            "open",
            "mended",
            "looked at",
            "accepted as it is"
          ],
          "description": "How it stands: open, mended, mended and looked at again, or accepted as it is by the customer. Left out: open."
        },
        "note": {
          "type": "string",
          "minLength": 1,
          "maxLength": 2000,
          "description": "What else there is to know."
        }
      },
      "unevaluatedProperties": false
    },
    "spot": {
      "type": "object",
      "title": "Spot",
      "description": "A place on a photo, in shares of its width and height, the photo upright.",
      "properties": {
        "x": {
          "type": "number",
          "minimum": 0,
          "maximum": 1,
          "description": "From the left."
        },
        "y": {
          "type": "number",
          "minimum": 0,
          "maximum": 1,
          "description": "From the top."
        }
      },
      "unevaluatedProperties": false
    },
    "photos": {
      "type": "object",
      "title": "Photos",
      "description": "Photos, by the hash of their content.",
      "additionalProperties": {
        "type": "boolean",
        "description": "Whether this photo belongs here."
      }
    }
  }
} as const
