import { type Beam, hung, type Loads } from '@evenhem/mechanics'
import { best, tell } from './measure.ts'

/** 5 bays of 36 in that run on 4 in beyond, of a stiff wooden pole. */
const beam: Beam = {
  from: -0.1,
  to: 4.67,
  stiffness: [{ from: -0.1, ei: 700 }],
  supports: [0, 0.914, 1.828, 2.742, 3.656, 4.57].map((at) => ({ at })),
}
const own: Loads = {
  spread: [{ from: -0.1, to: 4.67, each: 9 }],
  points: [
    { at: -0.1, force: 4 },
    { at: 4.67, force: 4 },
  ],
}
const pair = [
  { outer: -0.05, drawn: 2.285, stacked: 0.5, weight: 60 },
  { outer: 4.62, drawn: 2.285, stacked: 4.07, weight: 60 },
]
const count = 5

/** What a rod carries and how it hangs, its pair of panels stacked, drawn and at all steps between. */
export function rods(): void {
  console.log('\na rod and its panels')
  const all = () => Array.from({ length: count }, () => hung(beam, own, pair))
  tell({ what: '6 supports, a pair of panels, 17 positions of each', is: best(1000, all) / count, unit: 'ms a rod', limit: 0.5 })
}
