import { compose, figuresOf, lights, type PlacedCaption, paper, paperCss, type Scene, toSvg, withLegend } from '@evenhem/drawing'
import { asMeasured, createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { fontsFor } from '@evenhem/report'
import { tapeFor } from '@evenhem/server'
import { type Command, out, subjects, unitIn, units, watch, window } from './command.ts'
import { put } from './file.ts'
import { windowNamed, withJob } from './job.ts'
import { speechFor } from './speech.ts'

/** In millimetres: fits on A4 and on Letter, within margins that every printer has. Below the drawing are lines of words. */
const page = { width: 190, height: 180 }
const footing = 4
const views = ['elevation', 'plan', 'marks', 'level', 'hem', 'pins', 'loads'] as const
type View = (typeof views)[number]

/** The scene with lines of words at its foot: which window this is, and what its numbers are in. */
function withFooting(scene: Scene, lines: readonly string[]): Scene {
  const { size, weight } = paper.caption
  const words = lines.map((text, n): PlacedCaption => {
    const at = [paper.edge, scene.height + (n + 2) * footing - size] as const
    const box = { x: at[0], y: at[1] - size, width: scene.width, height: size }
    return { kind: 'caption', role: 'dimension', words: { text, at, anchor: 'start', size, weight, box } }
  })
  return { ...scene, height: scene.height + (lines.length + 1) * footing, items: [...scene.items, ...words] }
}

/** An SVG that stands alone, with the colours of paper, how each role looks, and the letters that its words were measured with. */
function standingAlone(svg: string): string {
  const colours = Object.entries({ ...lights.paper, sheet: '#ffffff', wallface: '#ffffff' }).map(
    ([name, colour]) => `--${name}:${colour}`,
  )
  const style = `.drawing{${colours.join(';')};--k:1;background:#ffffff}\n${paperCss()}\n${fontsFor(svg, 'drawing')}`
  return `${svg.replace(/^<svg(?:[^>"]|"[^"]*")*>/, (start) => `${start}<style>${style}</style>`)}\n`
}

export const draw: Command = {
  name: 'draw',
  says: 'draw',
  more: 'draw.more',
  subjects: subjects.job,
  options: {
    window: { ...window, required: true },
    view: { says: '--view', value: 'VIEW', choices: views, required: true },
    state: { says: '--state', value: 'STATE', choices: ['drawn', 'stacked'] },
    out,
    units,
    watch,
  },
  run: ({ subject, options }, streams) =>
    withJob(subject, streams, async ({ ordered, found, readings }) => {
      const { room, window, place } = windowNamed(found, options.window ?? '')
      const plan = createPlanner(plugins).window(found, ordered, place)
      const tape = tapeFor(found, unitIn(options))
      const { written, say, weight } = speechFor(tape, streams.language)
      const view = options.view as View
      const state = options.state === 'stacked' ? 'stacked' : 'drawn'
      const asked = { ...page, view, state, sizes: paper, write: written, say, weigh: weight } as const
      const scene = withLegend(compose(asMeasured(plan.layers, readings, plan.reckonings), asked), asked)
      const where = `${room.name}, ${window.name}`
      const isRounded = figuresOf(scene).some(({ figure: { value } }) => value !== undefined && written(value).off !== 0)
      const lengths = streams.voice('lengths-in', { unit: tape.unit, rounded: isRounded ? 'yes' : 'no' })
      const foot = [`${found.job.name}, ${where}. ${lengths}`, ...(view === 'loads' ? [say('drapery/estimate')] : [])]
      const svg = toSvg(withFooting(scene, foot), {
        title: `${streams.voice(view === 'plan' ? 'from-above' : view)}: ${where}`,
      })
      await put(standingAlone(svg), options.out, streams)
      for (const { what, why } of scene.leftOut)
        streams.err(`${streams.voice(why === 'around a corner' ? 'left-out-corner' : 'left-out', { says: say(what) })}\n`)
      return 0
    }),
}
