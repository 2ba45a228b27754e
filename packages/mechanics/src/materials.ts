import { ksi } from './inch-pounds.ts'

/** A published number of a material, in SI units, and where it stands. */
export interface Figure {
  readonly value: number
  /** Which alloy or product it is of. */
  readonly of: string
  readonly basis: 'read' | 'memory'
  readonly source: string
}
/** What a rod or a bracket can be made of. Wood is in `clearWoods`. */
export interface Material {
  /** Modulus of elasticity, Pa: the lowest that is published, so that a sag comes out too large and not too small. */
  readonly elasticity: Figure
  /** kg/m³: the highest that is published, as it is a load. */
  readonly density: Figure
  /** All published moduli, Pa. */
  readonly elasticities: readonly Figure[]
  /** It goes on sagging under a load that stays; its modulus is for a short time only. */
  readonly creeps: boolean
}

const figure =
  (basis: Figure['basis']) =>
  (value: number, of: string, source: string): Figure => ({ value, of, basis, source })
const read = figure('read')
const memory = figure('memory')
const GPa = 1e9

const by = (figures: readonly Figure[], before: (a: Figure, b: Figure) => boolean): Figure =>
  figures.reduce((best, each) => (before(each, best) ? each : best))
const material = (elasticities: readonly Figure[], densities: readonly Figure[], creeps = false): Material => ({
  elasticity: by(elasticities, (a, b) => a.value < b.value),
  density: by(densities, (a, b) => a.value > b.value),
  elasticities,
  creeps,
})

const aluminiumSheet = 'typical properties of the Aluminum Association, as data sheets give them'
const brassSheet = 'data sheet of the alloy'
const noSource = 'from memory, no source'

/** Metals and acrylic by name, with every number's source. */
export const materials = {
  steel: material(
    [
      read(29_000 * ksi, 'structural steel', 'AISC 360: 29,000 ksi'),
      memory(210 * GPa, 'structural steel', 'Eurocode 3, from memory'),
    ],
    [memory(7850, 'structural steel', noSource)],
  ),
  aluminium: material(
    [
      read(68.9 * GPa, '6063-T5', aluminiumSheet),
      read(68.9 * GPa, '6061-T6', 'appendices of two textbooks on mechanics of materials'),
      memory(10_100 * ksi, '6063', 'Aluminum Design Manual, from memory'),
      memory(70 * GPa, 'wrought alloys', 'Eurocode 9, from memory'),
    ],
    [read(2700, '6063-T5', aluminiumSheet)],
  ),
  stainless: material(
    [read(193 * GPa, '304', 'appendix of a textbook on mechanics of materials')],
    [memory(8000, '304', noSource)],
  ),
  brass: material(
    [
      read(16_000 * ksi, 'cartridge brass C26000', `${brassSheet}, ASTM B36: 16,000 ksi`),
      read(14_000 * ksi, 'free-cutting brass C36000', `${brassSheet}, ASTM B16: 14,000 ksi`),
    ],
    [memory(8530, 'cartridge brass C26000', noSource), memory(8500, 'free-cutting brass C36000', noSource)],
  ),
  // Not cast iron, which is a third as stiff, breaks without bending and is no rod.
  iron: material([memory(190 * GPa, 'wrought iron', noSource)], [memory(7850, 'wrought iron', `${noSource}; as steel`)]),
  acrylic: material(
    [
      read(2.76 * GPa, 'cast, the least allowed', 'UFGS guide specification quoting ASME PVHO-1, modulus by ASTM D638'),
      read(2.8 * GPa, 'cast sheet, the lower end', 'plastics data sheet, 2.8 to 3.2 GPa by ISO 527'),
    ],
    [read(1190, 'cast', 'UFGS guide specification: specific gravity 1.19')],
    true,
  ),
} as const satisfies Readonly<Record<string, Material>>
export type MaterialName = keyof typeof materials
