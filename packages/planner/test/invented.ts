import type { Job, Treatment } from '@evenhem/job'
import type { Fact, Level, Plugin, Rule } from '@evenhem/plugin'

/** An invented trade for these tests: the planner knows none. */
export const one = <T = number, L extends Level = 'treatment'>(id: string, of = 'treatment' as L) =>
  ({ id: `test/${id}@1`, of, many: false, schema: {} }) as const as unknown as Fact<T, L> & { readonly many: false }
export const many = <T = number, L extends Level = 'treatment'>(id: string, of = 'treatment' as L) =>
  ({ id: `test/${id}@1`, of, many: true, schema: {} }) as const as unknown as Fact<T, L> & { readonly many: true }

export const pluginOf = (id: string, rules: readonly Rule[], more: Partial<Plugin> = {}): Plugin => ({
  contract: 1,
  id,
  format: 1,
  kinds: [],
  additions: [],
  upgrades: [],
  words: {},
  rules,
  ...more,
})

const treatment = (id: string, more: object = {}): Treatment =>
  ({ id, hardware: 'h', draw: 'pair', panels: [], ...more }) as Treatment
const window = (id: string, treatments: readonly Treatment[]) => ({ id, name: id, walls: [], treatments: [...treatments] })

/** Two rooms; the first has two windows, the first of them two layers on different hardware. */
export const house: Job = {
  format: 'evenhem-job/1',
  units: 'in',
  job: { number: '1', name: 'Invented', country: 'US' },
  hardware: [
    { id: 'h', kind: 'pole', name: 'Pole' },
    { id: 'g', kind: 'wire', name: 'Wire' },
  ],
  rooms: [
    {
      id: 'r1',
      name: 'Room 1',
      windows: [window('w1', [treatment('under', { hardware: 'g' }), treatment('over')]), window('w2', [treatment('over')])],
    },
    { id: 'r2', name: 'Room 2', windows: [window('w1', [treatment('over')])] },
  ],
}
export const w1 = '/rooms/r1/windows/w1'
export const under = `${w1}/treatments/under`
export const over = `${w1}/treatments/over`

/** A copy of a job with a value at a place; only the path to it is copied. */
export function put<T>(root: T, place: string, value: unknown): T {
  const [token = '', ...rest] = place
    .split('/')
    .slice(1)
    .map((each) => each.replaceAll('~1', '/').replaceAll('~0', '~'))
  const inside = (old: unknown): unknown =>
    rest.length === 0
      ? value
      : put(old ?? {}, `/${rest.map((each) => each.replaceAll('~', '~0').replaceAll('/', '~1')).join('/')}`, value)
  if (Array.isArray(root)) return root.map((item) => (item.id === token ? inside(item) : item)) as T
  return { ...root, [token]: inside((root as Record<string, unknown>)[token]) }
}
