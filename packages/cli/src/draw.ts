import { compose, lights, paper, paperCss, toSvg } from '@evenhem/drawing'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { tapeFor } from '@evenhem/server'
import { type Command, out, unitIn, units, window } from './command.ts'
import { put } from './file.ts'
import { windowNamed, withJob } from './job.ts'
import { speechFor } from './speech.ts'

/** In millimetres: a page of A4 or Letter across, within margins that every printer has. */
const page = { width: 255, height: 180 }
const titles = { elevation: 'Elevation', marks: 'Marks' }

/** What a drawing that stands alone needs: the colours of paper, and how each role looks. */
const style = (): string => {
  const colours = Object.entries({ ...lights.paper, sheet: '#ffffff', wallface: '#ffffff' }).map(
    ([name, colour]) => `--${name}:${colour}`,
  )
  return `<style>.drawing{${colours.join(';')};--k:1;background:#ffffff}\n${paperCss()}</style>`
}

export const draw: Command = {
  name: 'draw',
  says: 'Draw a window, to scale, as SVG on a page across.',
  more: 'The elevation shows the window as it hangs, the marks sheet what to pencil on the wall.',
  subject: 'job',
  options: {
    window: { ...window, required: true },
    view: { says: 'What to draw.', value: 'VIEW', choices: ['elevation', 'marks'], required: true },
    state: { says: 'The drapery closed or open; left out: drawn, closed.', value: 'STATE', choices: ['drawn', 'stacked'] },
    out,
    units,
  },
  run: ({ subject, options }, streams) =>
    withJob(subject, streams, async ({ ordered, found }) => {
      const { room, window, place } = windowNamed(found, options.window ?? '')
      const { layers } = createPlanner(plugins).window(found, ordered, place)
      const { written, say } = speechFor(tapeFor(found, unitIn(options)))
      const view = options.view as keyof typeof titles
      const scene = compose(layers, {
        ...page,
        view,
        state: options.state === 'stacked' ? 'stacked' : 'drawn',
        sizes: paper,
        write: written,
        say,
      })
      const svg = toSvg(scene, { title: `${titles[view]}: ${room.name}, ${window.name}` })
      await put(`${svg.replace(/^<svg(?:[^>"]|"[^"]*")*>/, (start) => start + style())}\n`, options.out, streams)
      for (const { what } of scene.leftOut) streams.err(`left out for want of room: ${say(what)}\n`)
      return 0
    }),
}
