import type { ReadingUnit } from '@evenhem/length'
import type { ReactiveController, ReactiveControllerHost } from 'lit'
import { chosenLanguage, chosenLight, chosenUnit, following, type Light, lights, shine, units } from '../data/preferences.ts'
import { type Language, language, languages, speak } from '../words.ts'

const systemIsDark = matchMedia('(prefers-color-scheme: dark)')
const ofBrowser = (): Language => languages.find((each) => navigator.language.startsWith(each)) ?? 'en'

/** Light, language and unit of whoever reads: chosen on this tablet, else as the system says. Paper is printed in the light of paper. */
export class Choices implements ReactiveController {
  light: Light = 'paper'
  /** Absent: the order's own. */
  unit: ReadingUnit | undefined
  language: Language = 'en'
  private readonly host: ReactiveControllerHost

  constructor(host: ReactiveControllerHost) {
    this.host = host
    host.addController(this)
  }
  hostConnected(): void {
    this.followSystem()
    this.speak(chosenLanguage.read() ?? ofBrowser())
    this.unit = chosenUnit.read()
    systemIsDark.addEventListener('change', this.followSystem)
    addEventListener('beforeprint', this.forPrint)
    addEventListener('afterprint', this.afterPrint)
  }
  hostDisconnected(): void {
    systemIsDark.removeEventListener('change', this.followSystem)
    removeEventListener('beforeprint', this.forPrint)
    removeEventListener('afterprint', this.afterPrint)
  }

  readonly nextLight = (): void => {
    const light = following(lights, this.light)
    chosenLight.write(light)
    this.shine(light)
  }
  readonly nextLanguage = (): void => {
    const next = following(languages, language)
    chosenLanguage.write(next)
    this.speak(next)
  }
  /** The unit after this one. */
  nextUnit(now: ReadingUnit): void {
    this.unit = following(units, now)
    chosenUnit.write(this.unit)
    this.host.requestUpdate()
  }

  private readonly followSystem = (): void => this.shine(chosenLight.read() ?? (systemIsDark.matches ? 'night' : 'paper'))
  private readonly forPrint = (): void => shine('paper')
  private readonly afterPrint = (): void => shine(this.light)
  private shine(light: Light): void {
    this.light = light
    shine(light)
    this.host.requestUpdate()
  }
  private speak(chosen: Language): void {
    speak(chosen)
    this.language = chosen
    document.documentElement.lang = chosen
    this.host.requestUpdate()
  }
}
