import type { Words } from '@evenhem/plugin'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

const what = '{said, select, yes {{what}} other {aún nadie ha dicho qué está mal}}'
const owner =
  '{owner, select, workroom {el taller} installer {el instalador} trade {{trade, select, none {otro oficio} other {{trade}}}} customer {el cliente} other {todavía nadie}}{named, select, yes { ({who})} other {}}'
const by = '{by, select, none {, sin fecha acordada} other {, a más tardar el {by}}}'

/** The same codes as in English; the kit compares both. */
export const es: Words = {
  'punch-list/open': one(
    `Pendiente {n}: ${what}. {state, select, mended {Está corregido.} looked {Está corregido y se volvió a revisar.} other {Se aceptó como está.}}`,
  ),
  'punch-list/open.warn': one(`El pendiente {n} sigue abierto: ${what}. Quién lo corrige: ${owner}${by}.`),
  'punch-list/unsafe': one(`Pendiente {n}, que era un peligro: ${what}. Está corregido y se volvió a revisar.`),
  'punch-list/unsafe.unknown': one(
    `Pendiente {n}, que era un peligro: ${what}. Dicen que está corregido, y nadie lo ha vuelto a revisar.`,
    'Revíselo usted mismo y anótelo: antes no se entrega nada, y ningún motivo lo levanta.',
  ),
  'punch-list/unsafe.fail': one(
    `El pendiente {n} es un peligro: ${what}. Quién lo corrige: ${owner}${by}.`,
    'Alguien podría lastimarse: no se entrega nada hasta que esté corregido y se haya vuelto a revisar, y ningún motivo lo levanta. No deje que nadie se acerque, sobre todo los niños.',
  ),
  'punch-list/unsafe.accepted': one(
    `El pendiente {n} es un peligro y se aceptó como está: ${what}. Se esperaba que se corrigiera. Quién lo corrige: ${owner}${by}.`,
    'Lo que puede lastimar a alguien no se acepta: otra persona puede estar debajo. Haga que lo corrijan o desmóntelo.',
  ),
  'punch-list/unsafe-in-house': one(
    `Pendiente {n} de la casa, que era un peligro: ${what}. Está corregido y se volvió a revisar.`,
  ),
  'punch-list/unsafe-in-house.unknown': one(
    `Pendiente {n} de la casa, que era un peligro: ${what}. Dicen que está corregido, y nadie lo ha vuelto a revisar.`,
    'Revíselo usted mismo y anótelo: antes no se entrega ninguna ventana, y ningún motivo lo levanta.',
  ),
  'punch-list/unsafe-in-house.fail': one(
    `El pendiente {n} de la casa es un peligro: ${what}. Quién lo corrige: ${owner}${by}.`,
    'Alguien podría lastimarse: no se entrega ninguna ventana hasta que esté corregido y se haya vuelto a revisar, y ningún motivo lo levanta. No deje que nadie se acerque, sobre todo los niños.',
  ),
  'punch-list/unsafe-in-house.accepted': one(
    `El pendiente {n} de la casa es un peligro y se aceptó como está: ${what}. Se esperaba que se corrigiera. Quién lo corrige: ${owner}${by}.`,
    'Lo que puede lastimar a alguien no se acepta: puede pasar otra persona. Haga que lo corrijan o desmóntelo.',
  ),
  'punch-list/agreed': one(
    '{count, plural, one {El pendiente abierto tiene} other {Los # pendientes abiertos tienen}} quien lo corrija y una fecha.',
  ),
  'punch-list/agreed.unknown': one(
    `Pendiente {n}: ${what}. {lacks, select, owner {Aún no se sabe quién lo corrige.} by {Aún no se sabe para cuándo se corrige.} other {Aún no se sabe quién lo corrige ni para cuándo.}}`,
    'Acuérdelo antes de irse: lo que no es de nadie se queda sin hacer.',
  ),
  'punch-list/told': one('{count, plural, one {El pendiente dice} other {Los # pendientes dicen}} qué está mal.'),
  'punch-list/told.unknown': one('Un pendiente no dice qué está mal.', 'Escriba en pocas palabras qué está mal.'),
  'punch-list/way-mended': one('Está corregido'),
  'punch-list/way-looked': one('Lo volví a revisar: está bien'),
  'punch-list/way-accepted': one('El cliente lo acepta como está'),
  'punch-list/way-workroom': one('Lo corrige el taller'),
  'punch-list/way-installer': one('Lo corrijo yo'),
  'punch-list/way-trade': one('Lo corrige otro oficio'),
  'punch-list/way-customer': one('Se encarga el cliente'),
  'punch-list/call': one(`Avise por el pendiente {n} a quien lo corrige, ${owner}: ${what}${by}.`),
  'punch-list/call.why': one('Quien lo corrige tiene que saber qué está mal, dónde y para cuándo.'),
  'punch-list/call.done': one('Ya saben del pendiente {n}'),
  'punch-list/mend': one(`Corrija el pendiente {n}: ${what}${by}.`),
  'punch-list/mend.why': one('Le toca a usted. Tome una foto cuando esté corregido.'),
  'punch-list/mend.done': one('El pendiente {n} está corregido'),
  'punch-list/walk': one(
    'Repase con el cliente, en la ventana, {count, plural, one {el pendiente que queda} other {los # pendientes que quedan}}.',
  ),
  'punch-list/walk.why': one('Los dos ven qué queda, quién lo corrige y para cuándo. Lo corregido se vuelve a revisar.'),
  'punch-list/walk.done': one('El cliente ha visto lo que queda'),
  'punch-list/owner-workroom': one('taller'),
  'punch-list/owner-installer': one('instalador'),
  'punch-list/owner-other-trade': one('otro oficio'),
  'punch-list/owner-customer': one('cliente'),
  'punch-list/owner-none': one('todavía nadie'),
  'punch-list/cause-measured': one('la medición'),
  'punch-list/cause-made': one('la confección'),
  'punch-list/cause-hardware': one('el herraje'),
  'punch-list/cause-wall': one('la pared'),
  'punch-list/cause-installed': one('la instalación'),
  'punch-list/cause-damaged-in-transport': one('se dañó en el camino'),
  'punch-list/cause-other': one('otra cosa'),
  'punch-list/state-open': one('abierto'),
  'punch-list/state-mended': one('corregido'),
  'punch-list/state-looked-at': one('vuelto a revisar'),
  'punch-list/state-accepted-as-it-is': one('aceptado como está'),
  'punch-list/caution-unsafe': one(
    'Alguien podría lastimarse. No deje que nadie se acerque, sobre todo los niños, y desmonte lo que pueda caer. Siga las instrucciones del fabricante y las normas locales; el trabajo con licencia es de quien la tiene.',
  ),
  ...Object.fromEntries(Array.from({ length: 9 }, (_, n) => [`punch-list/pin-${n + 1}`, one(`pendiente ${n + 1}`)])),
  'punch-list/pin-more': one('un pendiente'),
}
