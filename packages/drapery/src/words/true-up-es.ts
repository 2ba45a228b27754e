import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'
import { hooksNamed, type trueUpWords } from './true-up.ts'

export const hookWordsEs = hooksNamed('paño izquierdo, gancho', 'paño derecho, gancho')

export const trueUpWordsEs: Words &
  Readonly<Record<keyof typeof trueUpWords, { readonly says: string; readonly help?: string }>> = {
  'drapery/hook-along': one('gancho, a lo largo de la pared'),
  'drapery/hooks-spread': one('pliegues a espacios iguales entre el borde de cierre y el extremo exterior'),
  'drapery/hem-read': one('dobladillo medido'),
  'drapery/hem-now': one('dobladillo ahora'),
  'drapery/hem-after': one('dobladillo después'),
  'drapery/hem-ordered': one('dobladillo pedido'),
  'drapery/pin-now': one('gancho ahora'),
  'drapery/pin-set': one('ponga el gancho a'),
  'drapery/pin-least': one('gancho más alto'),
  'drapery/pins-chosen': one(
    'la posición en el paso de la cinta, dentro de su margen y cerca de sus vecinas, que deja el dobladillo más cerca de lo pedido; un gancho más hondo lo sube',
  ),
  'drapery/pins-left': one('ganchos del paño izquierdo, uno por uno'),
  'drapery/pins-right': one('ganchos del paño derecho, uno por uno'),
  'drapery/hem-steep': one('Las alturas se dibujan 22 veces más empinadas que los anchos.'),
  'drapery/hem-even': one(
    'El dobladillo está parejo: de {least} a {most} donde se pidió {clearance}, dentro de {near}.{opens, select, yes { Abiertos, los paños quedan a {open} como mínimo.} other {}}',
  ),
  'drapery/hem-even.fail': one(
    'El dobladillo del {panel} cuelga {off} demasiado {way, select, low {bajo} other {alto}} en el gancho {hook}: mide {reads} donde se pidió {clearance}.',
    'Se permiten {near}. Tome una de las salidas de abajo, o haga arreglar el paño.',
  ),
  'drapery/hem-even.warn': one('El {panel} vuelve al taller.', 'Mida otra vez su dobladillo cuando haya vuelto y esté colgado.'),
  'drapery/hem-even.unknown': one(
    '{how, select, again {Lo decidido aún no está comprobado: hay que medir otra vez el dobladillo.} other {{count, plural, one {El dobladillo de un paño aún no se midió.} other {Los dobladillos de # paños aún no se midieron.}}}}',
    '{how, select, again {Ponga las medidas nuevas sobre las viejas, bajo los mismos ganchos.} other {Mídalo al menos bajo dos ganchos de cada paño, cerrado y con los pliegues sueltos.}}',
  ),
  'drapery/way-hem-pins': one(
    'Cambie {count, plural, one {un gancho} other {# ganchos}}: el dobladillo queda a {off} o menos de {clearance} en todo el ancho.{inside, select, no { Más no se logra con los ganchos.} other {}}{opens, select, yes { Abierto, queda a {open} como mínimo.} other {}} Los soportes se quedan.',
  ),
  'drapery/way-hem-pins-half': one(
    'La mitad de eso, {count, plural, one {un gancho} other {# ganchos}}: cerrado, el dobladillo queda a {off} o menos de {clearance}, y abierto queda a {open} como mínimo.',
  ),
  'drapery/way-hem-brackets': one(
    '{which, select, left {{leftWay, select, up {Suba} other {Baje}} el soporte izquierdo {left}} right {{rightWay, select, up {Suba} other {Baje}} el soporte derecho {right}} other {{leftWay, select, up {Suba} other {Baje}} el soporte izquierdo {left} y {rightWay, select, up {suba} other {baje}} el derecho {right}}}{supports, plural, =0 {} one {, con ellos el intermedio} other {, con ellos los intermedios}}: el dobladillo queda a {off} o menos de {clearance} en todo el ancho. Los ganchos se quedan.{inside, select, no { Un agujero nuevo no permite más.} other {}}',
  ),
  'drapery/way-hem-brackets-pins': one(
    '{which, select, left {{leftWay, select, up {Suba} other {Baje}} el soporte izquierdo {left}} right {{rightWay, select, up {Suba} other {Baje}} el soporte derecho {right}} other {{leftWay, select, up {Suba} other {Baje}} el soporte izquierdo {left} y {rightWay, select, up {suba} other {baje}} el derecho {right}}}{supports, plural, =0 {} one {, con ellos el intermedio} other {, con ellos los intermedios}}, y cambie {count, plural, one {un gancho} other {# ganchos}}: el dobladillo queda a {off} o menos de {clearance} en todo el ancho.{inside, select, no { Más no logran los dos.} other {}}',
  ),
  'drapery/way-hem-panel-back': one(
    'El {panel} vuelve al taller: {how, select, long {le sobran} other {le faltan}} {length}.{inside, select, no { Arreglado así, aún quedan {off}.} other {}}',
  ),
  'drapery/way-hem-read-again': one('Se midió otra vez, y mide lo mismo.'),
  'drapery/look-again': one('El dobladillo se mide otra vez el {date}.'),
  'drapery/look-again.warn': one(
    'Esta tela se asienta; no hay día fijado para medir otra vez el dobladillo.',
    '{days} días después de colgarla es el {date}. Ese día se empareja el dobladillo como el primero.',
  ),
  'drapery/way-look-again': one('Vuelva el {date}, {days} días después de colgarla.'),
  'drapery/set-pins': one('{count, plural, one {Cambie un gancho.} other {Cambie # ganchos, cada uno como se dice.}}'),
  'drapery/set-pins.why': one(
    '{how, select, meant {Así el dobladillo queda donde se pidió; tome primero esa salida.} other {Así se decidió.}} Desde la punta del gancho hasta el borde superior de la cortina. Después mida otra vez el dobladillo.',
  ),
  'drapery/set-pins.done': one('Los ganchos están puestos'),
  'drapery/move-bracket': one('{way, select, up {Suba} other {Baje}} el soporte {side} {by}.'),
  'drapery/move-bracket.why': one(
    'Su agujero de arriba queda entonces a {to} del piso. Quite antes los paños de ese lado, y tape los agujeros viejos.',
  ),
  'drapery/move-bracket.done': one('El soporte está movido'),
}
