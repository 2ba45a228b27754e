import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const css = readFileSync(new URL('../src/tokens.css', import.meta.url), 'utf8')
const tokensIn = (block: string) => Object.fromEntries([...block.matchAll(/--([\w]+): (#[0-9a-f]{3,6})/g)].map(([, name, colour]) => [name, colour] as const)) as Readonly<Record<string, string>>
const paper = tokensIn(/^:root \{([^}]*)\}/m.exec(css)?.[1] ?? '')
const lights = {
  paper,
  night: { ...paper, ...tokensIn(/'night'\] \{([^}]*)\}/.exec(css)?.[1] ?? '') },
  sun: { ...paper, ...tokensIn(/'sun'\] \{([^}]*)\}/.exec(css)?.[1] ?? '') },
}

/** Relative luminance, WCAG 2.2. */
function luminance(colour: string): number {
  const digits = colour.length === 4 ? [...colour.slice(1)].map((digit) => digit + digit) : (colour.slice(1).match(/../g) ?? [])
  const [r = 0, g = 0, b = 0] = digits.map((pair) => Number.parseInt(pair, 16) / 255).map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4))
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}
const contrast = (a: string, b: string): number => {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (light + 0.05) / (dark + 0.05)
}

const text = ['ink/sheet', 'ink/panel', 'ink2/sheet', 'ink2/panel', 'ink2/markbg', 'mark/sheet', 'mark/panel', 'mark/markbg', 'onact/act', 'tapeink/tape', 'warn/sheet', 'warn/panel', 'fail/sheet', 'fail/panel', 'ink/fabric', 'ink/blade', 'ink/markbg', 'act/panel']
const graphics = ['tapehook/tape', 'pass/sheet', 'pass/panel', 'line/sheet', 'line/panel', 'fedge/fabric', 'rodline/rod', 'frame/casing', 'act/sheet', 'tick/blade']

const tooFaint = (pairs: readonly string[], least: number) =>
  Object.entries(lights).flatMap(([light, tokens]) =>
    pairs.flatMap((pair) => {
      const [a = '', b = ''] = pair.split('/').map((name) => tokens[name])
      const ratio = contrast(a, b)
      return ratio >= least ? [] : [`${light}: ${pair} ${ratio.toFixed(1)}`]
    }),
  )

test('text stands out by 4.5 in every light', () => expect(tooFaint(text, 4.5)).toEqual([]))
test('lines and signs that carry meaning stand out by 3 in every light', () => expect(tooFaint(graphics, 3)).toEqual([]))
test('contrast is computed as WCAG 2.2 does', () => {
  expect(contrast('#fff', '#000')).toBeCloseTo(21, 5)
  expect(contrast(paper.ink as string, paper.sheet as string)).toBeCloseTo(15.9, 1)
})
