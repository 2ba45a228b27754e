import type { Place, PlacedWindow } from '@evenhem/job'
import type { ReactiveController, ReactiveControllerHost } from 'lit'
import type { House, ShortWindow } from '../data/house.ts'
import type { Planning } from '../data/planning.ts'

/** What is known of the house beside the window that is shown: asked for when somebody looks, forgotten when it may have changed. */
export class HousePlans implements ReactiveController {
  /** Absent while it is not worked out: of thousands of windows that takes a while. */
  house: House | undefined
  shorts: ReadonlyMap<Place, ShortWindow> = new Map()
  private readonly host: ReactiveControllerHost
  private readonly planning: Planning
  private readonly failed: (error: unknown) => void
  private asked: ReadonlySet<Place> = new Set()
  private isHouseAsked = false
  /** What is forgotten while it is worked out is not taken when it comes. */
  private age = 0

  constructor(host: ReactiveControllerHost, planning: Planning, failed: (error: unknown) => void) {
    this.host = host
    this.planning = planning
    this.failed = failed
    host.addController(this)
  }
  hostConnected(): void {}

  /** Asks for windows as they are drawn small, each once; the house comes after those that are seen. */
  need(places: readonly Place[]): void {
    const windows = places.filter((place) => !this.asked.has(place))
    if (windows.length === 0) return
    this.asked = new Set([...this.asked, ...windows])
    const { age } = this
    this.planning.plan({ ask: 'short', windows }).then((shorts) => {
      if (age !== this.age) return
      this.shorts = new Map([...this.shorts, ...shorts.map((short) => [short.place, short] as const)])
      this.host.requestUpdate()
      this.needHouse()
    }, this.failed)
  }
  private needHouse(): void {
    if (this.isHouseAsked) return
    this.isHouseAsked = true
    const { age } = this
    this.planning.plan({ ask: 'house' }).then((house) => {
      if (age !== this.age) return
      this.house = house
      this.host.requestUpdate()
    }, this.failed)
  }

  /** Forgets the windows of these places, and all where a place is at none of them, as one of a room is. */
  forget(places: readonly Place[], windows: readonly PlacedWindow[]): void {
    const touched = new Set(places.map((place) => place.split('/').slice(0, 5).join('/')))
    const areWindows = touched.size > 0 && windows.filter(({ place }) => touched.has(place)).length === touched.size
    this.shorts = areWindows ? new Map([...this.shorts].filter(([place]) => !touched.has(place))) : new Map()
    this.asked = new Set(this.shorts.keys())
    this.age++
    this.isHouseAsked = false
    this.house = undefined
    this.host.requestUpdate()
  }
}
