import type { Words } from '@evenhem/plugin'
import type { checkInWords } from './check-in.ts'
import { one } from './sentence.ts'

export const checkInWordsEs: Readonly<Record<keyof typeof checkInWords, Words[string]>> = {
  'drapery/rod-piece': one('pieza de la barra'),
  'drapery/missing': one('faltan'),
  'drapery/needed': one('hacen falta'),
  'drapery/counted': one('contados'),
  'drapery/came': one(
    'Llegó todo lo necesario: {kinds, plural, one {# clase de pieza contada} other {# clases de piezas contadas}}{over, plural, =0 {.} one {; sobran {spare} de: {part}.} other {; sobran de # clases.}}',
  ),
  'drapery/came.unknown': one(
    '{left, plural, one {Falta contar una clase de pieza: {part}.} other {Falta contar # clases de piezas; la primera: {part}.}}',
    'Cuente el resto antes de marcar nada.',
  ),
  'drapery/came.fail': one(
    'Faltan: {missing} × {part}. Llegaron {came} y hacen falta {needed}.',
    'Cuente otra vez y busque en las cajas de las otras ventanas. Lo que falta debe estar antes de marcar nada.',
  ),
  'drapery/came.called': one(
    'Faltan: {missing} × {part}. Llegaron {came} y hacen falta {needed}. El taller está avisado.',
    'No se marca nada hasta que llegue, o hasta que alguien dé una razón para seguir.',
  ),
  'drapery/way-spare': one('Tomar {count} × {part} de la otra capa, a la que le sobran {spare}.'),
  'drapery/as-ordered.go-on': one('El {panel}, {size}: medido {measured}, pedido {ordered}; se decidió seguir así.'),
  'drapery/as-ordered.reset-pins': one(
    'El {panel}, {size}: medido {measured}, pedido {ordered}; los ganchos se ajustaron para eso.',
  ),
  'drapery/as-ordered.move-the-brackets': one('El {panel}, {size}: medido {measured}, pedido {ordered}; los soportes lo siguen.'),
  'drapery/as-ordered.call-the-workroom': one(
    'El {panel}, {size}: medido {measured}, pedido {ordered}. El taller está avisado.',
    'No se marca nada hasta que responda, o hasta que alguien dé una razón para seguir.',
  ),
  'drapery/pins-alike.taken': one('Los ganchos están ajustados con {apart} de diferencia, lo que difieren los paños en largo.'),
  'drapery/hems-alike.go-on': one('Los dos dobladillos cuelgan con {apart} de diferencia; se decidió seguir así.'),
  'drapery/hems-alike.called': one(
    'Los dos dobladillos colgarían con {apart} de diferencia: holgura de {left} a la izquierda, de {right} a la derecha. El taller está avisado.',
    'No se marca nada hasta que responda, o hasta que alguien dé una razón para seguir.',
  ),
  'drapery/opening-read': one('En el vano, {size}: medido {measured}, pedido {ordered}; dentro de la tolerancia.'),
  'drapery/opening-read.unknown': one('Aún no se sabe si los vanos son como se pidieron.'),
  'drapery/opening-read.warn': one(
    'En el vano, {size}: medido {measured}, pedido {ordered}; {off} {way, select, over {más} other {menos}} de lo pedido.',
    'Mídalo otra vez. El plan sigue lo medido; los paños y la barra se hicieron para lo pedido.',
  ),
  'drapery/opening-read.go-on': one('En el vano, {size}: medido {measured}, pedido {ordered}; se decidió seguir así.'),
  'drapery/opening-read.called': one(
    'En el vano, {size}: medido {measured}, pedido {ordered}. El taller está avisado.',
    'No se marca nada hasta que responda, o hasta que alguien dé una razón para seguir.',
  ),
  'drapery/panels-swapped': one('Cada paño llegó en su bolsa.'),
  'drapery/panels-swapped.fail': one(
    'Los dos paños llegaron cada uno en la bolsa del otro: cada uno mide como se pidió el otro.',
    'Cuelgue cada uno en el otro lado: anote el cambio y cambie las etiquetas de las bolsas.',
  ),
  'drapery/panels-swapped.called': one(
    'Los dos paños llegaron cada uno en la bolsa del otro: cada uno mide como se pidió el otro. El taller está avisado.',
    'No se marca nada hasta que responda, o hasta que alguien dé una razón para seguir.',
  ),
  'drapery/panels-swapped.unknown': one('Aún no se sabe si cada paño llegó en su bolsa.'),
  'drapery/way-swap': one('Cambiar los paños: cada uno toma las medidas del otro.'),
  'drapery/way-pins': one(
    '{how, select, one {Ajustar los ganchos del {panel} a {pin}} pair {Ajustar los ganchos a {left} en el izquierdo y a {right} en el derecho} other {Ajustar los ganchos de {count} paños entre {least} y {most}}}{move, select, up {, con los soportes {by} más altos que lo pedido} down {, con los soportes {by} más bajos que lo pedido} other {}}: los dobladillos cuelgan entonces como se pidió.',
  ),
  'drapery/way-brackets': one(
    'Poner los soportes {by} más {move, select, up {altos} other {bajos}} que lo pedido, como hace el plan con paños de este largo.',
  ),
  'drapery/way-go-on': one('Seguir así.'),
  'drapery/way-call': one('Parar y llamar al taller.'),
}
