import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Beam, Loads } from '../src/index.ts'

// A rod as an input deck of CalculiX (ccx, which Debian has), and what that program makes of it: the rod cut into short beam elements, loads only at nodes.
// Places must be whole centimetres. With the beam element U1 of version 2.20 only some of it is right: it bends along y, so down is y; forces at its nodes
// are printed wrongly, so each support is a foot on a stiff spring, and what holds that spring is the reaction; nodes cannot be moved, so the rod lies on its
// foot and on a shim, which a large force presses as far down into a spring of its own as the support is low.

/** How long an element is, m. */
const element = 0.005
/** A number as the program reads it: never without a point. */
const real = (x: number): string => x.toExponential(12)
const nodeAt = (x: number): number => 1 + Math.round(x / element)
/** Numbers of the nodes right of a splice, of shims, feet and grounds of supports begin here. */
const [beyondSplice, shim, foot, ground] = [10_000, 20_000, 30_000, 40_000]
/** Springs, N/m: they give way by less than a thousandth of what the rod does. */
const spring = 1e10

const range = (from: number, to: number): readonly number[] => Array.from({ length: to - from }, (_, i) => from + i)
/** The nodes from the left end, as if each had one number, and what leads from a number to a place. */
const meshOf = ({ from, to, splices = [] }: Beam) => {
  const last = nodeAt(to - from)
  const spliced = new Set(splices.map((x) => nodeAt(x - from)))
  return { nodes: range(1, last + 1), elements: range(1, last), spliced, of: (x: number) => nodeAt(x - from) }
}
type Mesh = ReturnType<typeof meshOf>

const nodesOf = ({ nodes, spliced, of }: Mesh, { supports }: Beam): readonly string[] => {
  const at = (i: number) => real((i - 1) * element)
  const below = (first: number, y: number) => supports.map((each, n) => `${first + n}, ${at(of(each.at))}, ${y}., 0.`)
  return [
    ...['*NODE, NSET=ROD', ...nodes.map((i) => `${i}, ${at(i)}, 0., 0.`)],
    ...[...spliced].map((i) => `${beyondSplice + i}, ${at(i)}, 0., 0.`),
    ...['*NODE, NSET=SPRINGS', ...below(shim, 1), ...below(foot, 1)],
    ...['*NODE, NSET=GROUNDS', ...below(ground, 2)],
  ]
}
/** Elements in a set for each stiffness. With E = 1 the inertia is E·I; the area is so large that shear adds nothing. */
function elementsOf({ elements, spliced, of }: Mesh, { stiffness }: Beam): readonly string[] {
  const set = (i: number) =>
    Math.max(
      0,
      stiffness.findLastIndex(({ from }) => of(from) <= i),
    )
  const lines = elements.map(
    (i) => `*ELEMENT, TYPE=U1, ELSET=S${set(i)}\n${i}, ${spliced.has(i) ? beyondSplice + i : i}, ${i + 1}`,
  )
  const used = [...new Set(elements.map(set))]
  return [
    '*USER ELEMENT, TYPE=U1, NODES=2, INTEGRATION POINTS=2, MAXDOF=6',
    ...lines,
    '*MATERIAL, NAME=ONE\n*ELASTIC\n1., 0.',
    ...used.map(
      (s) => `*BEAM SECTION, ELSET=S${s}, MATERIAL=ONE, SECTION=GENERAL\n1.e15, ${sectionOf(stiffness[s]?.ei)}, 1.\n0., 1., 0.`,
    ),
  ]
}
const sectionOf = (ei = 0): string => `${real(ei)}, 0., ${real(ei)}`
/** Supports, and splices as pairs of nodes that are as far down as one another and turn each for itself. */
const heldOf = ({ spliced, of }: Mesh, { supports }: Beam): readonly string[] => [
  '*ELEMENT, TYPE=SPRING2, ELSET=SUPPORTS',
  ...supports.map((_, n) => `${foot + n}, ${foot + n}, ${ground + n}`),
  '*ELEMENT, TYPE=SPRING1, ELSET=SUPPORTS',
  ...supports.map((_, n) => `${shim + n}, ${shim + n}`),
  `*SPRING, ELSET=SUPPORTS\n2, 2\n${real(spring)}`,
  ...supports.map(({ at }, n) => `*EQUATION\n3\n${of(at)}, 2, 1., ${foot + n}, 2, -1., ${shim + n}, 2, -1.`),
  ...[...spliced].map((i) => `*EQUATION\n2\n${beyondSplice + i}, 2, 1., ${i}, 2, -1.`),
  '*BOUNDARY\nROD, 1, 1\nROD, 3, 5\nSPRINGS, 1, 1\nSPRINGS, 3, 3\nGROUNDS, 1, 3',
]
/** Each element's share of what is spread, half at each end, and the points. */
function loadsOf({ elements, of }: Mesh, { spread, points }: Loads): readonly string[] {
  const halves = spread.flatMap(({ from, to, each }) =>
    elements
      .filter((i) => of(from) <= i && i < of(to))
      .flatMap((i) => [i, i + 1].map((node) => ({ node, force: (each * element) / 2 }))),
  )
  const all = [...halves, ...points.map(({ at, force }) => ({ node: of(at), force }))]
  const sums = new Map<number, number>()
  for (const { node, force } of all) sums.set(node, (sums.get(node) ?? 0) + force)
  return [...sums].map(([node, force]) => `${node}, 2, ${real(force)}`)
}
/** The whole deck: nodes, elements, what holds them, and one static step. */
export function deckOf(beam: Beam, loads: Loads): string {
  const mesh = meshOf(beam)
  const shims = beam.supports.map(({ down = 0 }, n) => `${shim + n}, 2, ${real(spring * down)}`)
  const step = [
    '*STEP\n*STATIC\n*CLOAD',
    ...[...shims, ...loadsOf(mesh, loads)],
    '*NODE PRINT, NSET=GROUNDS\nRF\n*NODE PRINT, NSET=ROD\nU\n*END STEP\n',
  ]
  return [...nodesOf(mesh, beam), ...heldOf(mesh, beam), ...elementsOf(mesh, beam), ...step].join('\n')
}

/** What ccx prints: for each node its number and what is along x, y and z, in N or m. */
const printed = (dat: string): readonly (readonly [node: number, y: number])[] =>
  [...dat.matchAll(/^ +(\d+) +\S+ +(\S+) +\S+/gm)].map(([, node, y]) => [Number(node), Number(y)])

/** Whether ccx is on this machine. */
export const hasCcx = (): boolean => spawnSync('ccx', ['-v']).error === undefined

/** The rod as ccx bends it: what each support carries, N, and how far down its nodes are, m. */
export function bentByCcx(beam: Beam, loads: Loads) {
  const folder = mkdtempSync(join(tmpdir(), 'evenhem-ccx-'))
  try {
    writeFileSync(join(folder, 'rod.inp'), deckOf(beam, loads))
    const { stdout } = spawnSync('ccx', ['rod'], { cwd: folder, encoding: 'utf8', timeout: 60_000 })
    if (!stdout.includes('Job finished') || stdout.includes('*ERROR')) throw new Error(`Unexpected end of ccx: ${stdout}`)
    return readBack(beam, readFileSync(join(folder, 'rod.dat'), 'utf8'))
  } finally {
    rmSync(folder, { recursive: true })
  }
}
function readBack(beam: Beam, dat: string) {
  const all = printed(dat)
  return {
    reactions: all.filter(([node]) => node >= ground).map(([, y]) => -y),
    places: all.flatMap(([node, y]) => (node < beyondSplice ? [{ at: beam.from + (node - 1) * element, down: y }] : [])),
  }
}
