import { type Language, language, type Texts } from '../words.ts'

const en = {
  // Tablets and the desk.
  pairTitle: 'Pair this tablet',
  pairHelp: 'At the desk, open Tablets and let one in. It shows a code that holds for ten minutes and opens once.',
  pairCode: 'Code',
  pairName: 'Name of this tablet, for the others',
  pairGo: 'This tablet is paired',
  tabletsOff: 'This server is for this machine alone. Start it with evenhem serve --network to let tablets in.',
  tabletsHelp: 'A tablet in the same network opens {address}, or reads the squares with its camera.',
  letIn: 'Let a tablet in',
  anotherCode: 'Another code',
  codeIs: 'Code {code}, until {until}. It opens once.',
  squaresOf: 'Squares for a camera: {link}',
  tabletsKnown: 'Paired',
  tabletsNone: 'No tablet yet.',
  tabletSince: 'since {since}, last seen {seen}',
  sendAway: 'Send away',
  sendAwayWho: 'Send {name} away',

  // Many jobs.
  jobsTitle: 'Jobs',
  installOn: 'installed on {day}',
  nothingEntered: 'nothing entered yet',
  enteredUntil: '{n} entries, the last {when}',
  squares: 'Squares',
  squaresFor: 'Squares for a camera that lead to {name}',
}
const es: Texts<typeof en> = {
  // Tablets and the desk.
  pairTitle: 'Vincular esta tableta',
  pairHelp: 'En la oficina, abre Tabletas y deja entrar una. Muestra un código que vale diez minutos y abre una sola vez.',
  pairCode: 'Código',
  pairName: 'Nombre de esta tableta, para las demás',
  pairGo: 'Esta tableta está vinculada',
  tabletsOff: 'Este servidor es solo para este equipo. Inícialo con evenhem serve --network para dejar entrar tabletas.',
  tabletsHelp: 'Una tableta en la misma red abre {address}, o lee los cuadros con su cámara.',
  letIn: 'Dejar entrar una tableta',
  anotherCode: 'Otro código',
  codeIs: 'Código {code}, hasta las {until}. Abre una sola vez.',
  squaresOf: 'Cuadros para una cámara: {link}',
  tabletsKnown: 'Vinculadas',
  tabletsNone: 'Ninguna todavía.',
  tabletSince: 'desde {since}, vista por última vez {seen}',
  sendAway: 'Despedir',
  sendAwayWho: 'Despedir {name}',

  // Many jobs.
  jobsTitle: 'Trabajos',
  installOn: 'instalación el {day}',
  nothingEntered: 'nada anotado todavía',
  enteredUntil: '{n} anotaciones, la última {when}',
  squares: 'Cuadros',
  squaresFor: 'Cuadros para una cámara que llevan a {name}',
}
export const deskTables: Readonly<Record<Language, Texts<typeof en>>> = { en, es }

/** What the pages beside the sheet say: they come when they are asked for, and their words with them. */
export const deskWords = (): Texts<typeof en> => deskTables[language]
