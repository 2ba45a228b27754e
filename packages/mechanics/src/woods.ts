const nds = 'National Design Specification for Wood Construction (ANSI/AWC 2018)'

/** Where a table of woods was read. */
export const woodSources = {
  speciesGroups: { source: `${nds}, Table 12.3.3A`, basis: 'read' },
  clearWoods: { source: 'Wood Handbook, FPL-GTR-282 (USDA Forest Products Laboratory, 2021), Table 5-3a', basis: 'read' },
  creepFactors: { source: `${nds}, 3.5.2, on a page of its publisher`, basis: 'read' },
} as const

/** Specific gravity by the species group stamped on framing lumber; on ovendry weight and volume. For the equations of the NDS. */
export const speciesGroups = {
  'Douglas Fir-Larch': 0.5,
  'Southern Pine': 0.55,
  'Spruce-Pine-Fir': 0.42,
  'Spruce-Pine-Fir (South)': 0.36,
  'Hem-Fir': 0.43,
  'Western Cedars': 0.36,
  'Red Oak': 0.67,
  'White Oak': 0.73,
  'Eastern White Pine': 0.36,
  'Yellow Poplar': 0.43,
  'Ponderosa Pine': 0.43,
  Redwood: 0.37,
} as const
export type SpeciesGroup = keyof typeof speciesGroups

/** The specific gravity that stands for a stud whose species nobody knows: that of the lightest common framing. Our choice, and a cautious one. */
export const unknownGravity = 0.36

/** A clear wood at 12 % moisture content. */
export interface Wood {
  /** On ovendry weight and volume at 12 %. For the equations of the Wood Handbook. */
  readonly gravity: number
  /** Modulus of elasticity, Pa, as printed: with the shear of a bending test of span to depth 14 in it, so that the sag of a pole comes out a little too large. */
  readonly elasticity: number
}
const wood = (gravity: number, gigapascals: number): Wood => ({ gravity, elasticity: gigapascals * 1e9 })

/** Clear woods by the Wood Handbook's names. */
export const clearWoods = {
  'Oak, northern red': wood(0.63, 12.5),
  'Oak, white': wood(0.68, 12.3),
  'Maple, sugar': wood(0.63, 12.6),
  'Maple, red': wood(0.54, 11.3),
  'Walnut, black': wood(0.55, 11.6),
  'Cherry, black': wood(0.5, 10.3),
  'Ash, white': wood(0.6, 12),
  'Beech, American': wood(0.64, 11.9),
  'Birch, yellow': wood(0.62, 13.9),
  'Yellow-poplar': wood(0.42, 10.9),
  'Basswood, American': wood(0.37, 10.1),
  'Alder, red': wood(0.41, 9.5),
  'Douglas-fir, coast': wood(0.48, 13.4),
  'Pine, loblolly': wood(0.51, 12.3),
  'Pine, longleaf': wood(0.59, 13.7),
  'Pine, eastern white': wood(0.35, 8.5),
  'Pine, ponderosa': wood(0.4, 8.9),
  'Pine, sugar': wood(0.36, 8.2),
  'Pine, western white': wood(0.35, 10.1),
  'Spruce, Sitka': wood(0.4, 10.8),
  'Spruce, white': wood(0.36, 9.6),
  'Spruce, Engelmann': wood(0.35, 8.9),
  'Hemlock, western': wood(0.45, 11.3),
  'Cedar, western redcedar': wood(0.32, 7.7),
} as const satisfies Readonly<Record<string, Wood>>
export type ClearWood = keyof typeof clearWoods

/** What a printed modulus is multiplied by to be free of shear (Table 5-3a, footnote c; read). Sag is worked out without it. */
export const freeOfShear = 1.1

/** What the sag of wood under a load that stays grows to, times its first sag. Creep alone may be anything up to twice the first sag. */
export const creepFactors = { seasoned: 1.5, unseasoned: 2 } as const
