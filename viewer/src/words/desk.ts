import { type Language, language, type Texts } from '../words.ts'

const en = {
  // How this tablet stands to the server and to others.
  waiting: '{n} waiting',
  allSent: 'All is sent.',
  inContact: 'In contact with the server',
  noContact: 'No contact',
  noContactSince: 'No contact with the server since {when}',
  contactWaiting: '{n} entries wait on this tablet. They are sent when the server answers.',
  contactWaitingOne: 'One entry waits on this tablet. It is sent when the server answers.',
  contactLast: 'Last contact: {when}',
  contactNever: 'The server has not answered yet',
  contactForgets: 'This browser keeps nothing when the page is closed: leave it open until all is sent.',
  allHere: 'Everything for this job is on this tablet. It opens without the server.',
  needsServer:
    'This page needs the server to open again: leave it open while you are away. What you enter is kept on this tablet either way.',
  littleRoom: 'Little room is left on this tablet: {n} MB. Make room before you go on.',
  notKept:
    'There was no room to keep this on the tablet, so it still stands only where you entered it. Make room, then save again.',
  otherTab: 'An older page of this job is open in another tab. Close it, and this one goes on.',
  newOrder: 'The order was changed. What you see is worked out anew, with everything that was found.',
  othersHere: 'Also at this job:',
  isHere: '{names} is here too',
  pairAgain: 'Pair this tablet again',
  tabletsTitle: 'Tablets',

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
  installOn: 'installation on {day}',
  nothingEntered: 'nothing entered yet',
  enteredUntil: '{n} entries, the last {when}',
  squares: 'Squares',
  squaresFor: 'Squares for a camera that lead to {name}',
}
const es: Texts<typeof en> = {
  // How this tablet stands to the server and to others.
  waiting: '{n} en espera',
  allSent: 'Todo está enviado.',
  inContact: 'En contacto con el servidor',
  noContact: 'Sin contacto',
  noContactSince: 'Sin contacto con el servidor desde las {when}',
  contactWaiting: '{n} anotaciones esperan en esta tableta. Se envían cuando el servidor responda.',
  contactWaitingOne: 'Una anotación espera en esta tableta. Se envía cuando el servidor responda.',
  contactLast: 'Último contacto: {when}',
  contactNever: 'El servidor no ha respondido todavía',
  contactForgets: 'Este navegador no guarda nada al cerrar la página: déjala abierta hasta que todo esté enviado.',
  allHere: 'Todo lo de este trabajo está en esta tableta. Se abre sin el servidor.',
  needsServer:
    'Esta página necesita el servidor para volver a abrirse: déjala abierta mientras estés fuera. Lo que anotes queda guardado en esta tableta de todos modos.',
  littleRoom: 'Queda poco espacio en esta tableta: {n} MB. Haz sitio antes de seguir.',
  notKept: 'No hubo espacio para guardarlo en la tableta; sigue solo donde lo anotaste. Haz sitio y guarda otra vez.',
  otherTab: 'Una página anterior de este trabajo está abierta en otra pestaña. Ciérrala y esta continúa.',
  newOrder: 'El pedido cambió. Lo que ves está calculado de nuevo, con todo lo encontrado.',
  othersHere: 'También en este trabajo:',
  isHere: '{names} también está aquí',
  pairAgain: 'Vincular esta tableta otra vez',
  tabletsTitle: 'Tabletas',

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

/** What is said about tablets, the server and its jobs: the first paint does not wait for these words. */
export const deskWords = (): Texts<typeof en> => deskTables[language]
