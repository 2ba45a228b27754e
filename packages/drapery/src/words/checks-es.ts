import type { Words } from '@evenhem/plugin'
import type { checkWords } from './checks.ts'
import { one } from './sentence.ts'

export const checkWordsEs: Readonly<Record<keyof typeof checkWords, Words[string]>> = {
  'drapery/coverage': one('Cerrada, la cortina sobrepasa el marco {left} a la izquierda y {right} a la derecha.'),
  'drapery/coverage.fail': one(
    'Cerrada, a la cortina le faltan {short} para llegar al borde del marco en el lado {side}; se esperaba que lo sobrepasara.',
    'Pida al taller que corrija el ancho de la barra o su lugar antes de marcar nada.',
  ),
  'drapery/coverage.unknown': one('Aún no se sabe si la cortina cubre el marco.', 'Mida el marco y el ancho de la barra.'),
  'drapery/panel-width': one('El {panel} llena su parte de la barra, {share}.'),
  'drapery/panel-width.warn': one(
    'El {panel} es {less} {way, select, short {más angosto} other {más ancho}} que su parte de la barra, {share}.',
    'Hasta {off} se puede acomodar; cuide que el par cierre en el centro.',
  ),
  'drapery/panel-width.fail': one(
    'El {panel} es {less} más angosto que su parte de la barra, {share}; puede pasarse {off} como máximo y nunca quedar corto.',
    'Mídalo otra vez, del primer al último pliegue. Si sigue angosto, llame al taller: el par no cerraría.',
  ),
  'drapery/panel-width.unknown': one('Aún no se sabe si los paños llenan la barra.'),
  'drapery/rod-height': one('La barra queda a la altura pedida: {worked} según los paños, {meant} según el pedido.'),
  'drapery/rod-height.fail': one(
    'Según los paños, la parte superior de la barra va a {worked}; según el pedido, a {meant}: {apart} de diferencia, permitido {near}.',
    'A los paños {way, select, long {les sobran} other {les faltan}} {apart} de largo. {cause} Acuérdelo con el taller antes de marcar nada.',
  ),
  'drapery/rod-height.unknown': one('Aún no se sabe si la barra queda a la altura pedida.'),
  'drapery/rod-height.unsaid': one(
    'El pedido no dice a qué altura debe ir la barra, así que su altura no se puede comprobar por otro camino.',
    'Pregunte al taller, o compare con la barra que imagina el cliente: por encima del marco, por debajo del techo.',
  ),
  'drapery/hems-alike': one('Los dos dobladillos cuelgan parejos: holgura de {left} y de {right}.'),
  'drapery/hems-alike.warn': one(
    'Los dos dobladillos cuelgan con {apart} de diferencia: holgura de {left} a la izquierda, de {right} a la derecha; permitido {near}.{cause, select, lengths { Los largos de los paños difieren en {lengths}.} other {}}',
    'Ajuste los ganchos de un paño hasta que los dobladillos queden parejos.',
  ),
  'drapery/hems-alike.fail': one(
    'Los dos dobladillos colgarían con {apart} de diferencia: holgura de {left} a la izquierda, de {right} a la derecha; los ganchos pueden compensar {pins}.',
    'Mida otra vez los dos paños y sus ganchos. Si siguen distintos, llame al taller: un paño debe volver antes de marcar nada.',
  ),
  'drapery/hems-alike.unknown': one('Aún no se sabe si los dos dobladillos cuelgan parejos.'),
  'drapery/as-ordered': one('El {panel}, {size}: medido {measured}, pedido {ordered}; dentro de la tolerancia.'),
  'drapery/as-ordered.unknown': one('Aún no se sabe si los paños son como se pidieron.'),
  'drapery/as-ordered.warn': one(
    'El {panel}, {size}: medido {measured}, pedido {ordered}; {off} {way, select, over {más} other {menos}} de lo pedido.',
    'Vuelva a ajustar los ganchos.',
  ),
  'drapery/as-ordered.fail': one(
    'El {panel}, {size}: medido {measured}, pedido {ordered}; {off} {way, select, over {más} other {menos}} de lo pedido.',
    'Mídalo otra vez. Si sigue así, llame al taller antes de marcar nada.',
  ),
  'drapery/return-held': one('{count, plural, one {El retorno está sujeto} other {Los dos retornos están sujetos}} a la pared.'),
  'drapery/return-held.unknown': one('Aún no se sabe si los retornos están sujetos a la pared.'),
  'drapery/return-held.warn': one(
    'El retorno {side} mide {return}, y el pedido no dice qué lo sujeta a la pared.',
    'Pregunte al taller: una escuadra, o ningún retorno.',
  ),
  'drapery/no-cause': one('Ninguna de las cantidades previstas lo explica por sí sola.'),
  'drapery/several-causes': one(
    'Más de una de las cantidades previstas mide eso, así que no se puede decir cuál se olvidó o se tomó dos veces.',
  ),
  'drapery/pin.forgotten': one('Es lo que mide la posición del gancho: puede haberse olvidado.'),
  'drapery/pin.twice': one('Es lo que mide la posición del gancho: puede haberse sumado dos veces.'),
  'drapery/eye-drop.forgotten': one('Es lo que mide la caída de la barra a los ganchos: puede haberse olvidado.'),
  'drapery/eye-drop.twice': one('Es lo que mide la caída de la barra a los ganchos: puede haberse restado dos veces.'),
  'drapery/clearance.forgotten': one('Es lo que mide la holgura: puede haberse olvidado.'),
  'drapery/clearance.twice': one('Es lo que mide la holgura: puede haberse restado dos veces.'),
}
