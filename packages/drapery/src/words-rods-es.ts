import type { Words } from '@evenhem/plugin'
import type { rodWords } from './words-rods.ts'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

export const rodWordsEs: Words & Readonly<Record<keyof typeof rodWords, { readonly says: string; readonly help?: string }>> = {
  'drapery/carrier-drop': one('caída al carro'),
  'drapery/carriers-needed': one('carros necesarios'),
  'drapery/hooks-in-master': one('ganchos en el carro principal'),
  'drapery/hooks-in-end': one('ganchos en el soporte de extremo'),
  'drapery/half-overlap': one('la mitad del cruce'),
  'drapery/overlap-ordered': one('cruce'),
  'drapery/share-overlapped': one('su parte de la barra y la mitad del cruce'),
  'drapery/ceiling-drop': one('del techo a donde apoyan los ganchos'),
  'drapery/bears': one('donde apoyan los ganchos'),
  'drapery/half-covered': one('la mitad de lo cubierto'),
  'drapery/from-wall': one('desde la pared'),
  'drapery/hole-out': one('agujero desde la línea de ganchos'),
  'drapery/at-left': one('a la izquierda'),
  'drapery/at-middle': one('en el centro'),
  'drapery/at-right': one('a la derecha'),
  'drapery/fold-room': one('espacio detrás de los carros'),
  'drapery/kept-free': one('se deja libre junto a la pared'),
  'drapery/space-most': one('espacio más ancho que dobla hacia atrás'),
  'drapery/twice': one('dos veces'),
  'drapery/return-fits': one('El retorno {side} mide {return}, la proyección {projection}: llega a la pared.'),
  'drapery/return-fits.fail': one(
    'El retorno {side} mide {return}, {less} menos que la proyección de {projection}; lo permitido es {short} como máximo.',
    'Sacaría la última anilla o el último carro de su esquina. Llame al taller, o use un soporte de menos proyección, antes de taladrar nada.',
  ),
  'drapery/return-fits.warn': one(
    'El retorno {side} mide {return}, {less} más que la proyección de {projection}; un retorno al que le sobra más de {over} se abomba.',
    'Mírelo cuando cuelgue; lo que lo sujeta puede llevar el borde más atrás.',
  ),
  'drapery/return-fits.unknown': one('Aún no se sabe si los retornos concuerdan con la proyección.'),
  'drapery/corner': one('esquina'),
  'drapery/set-back': one('retroceso en la esquina'),
  'drapery/set-back-rule': one('proyección entre la tangente de medio ángulo'),
  'drapery/corner-angle': one('ángulo de la esquina'),
  'drapery/corner-room-left': one('sobra junto a la esquina'),
  'drapery/angle-unknown': one('ángulo sin medir'),
  'drapery/from-left-corner': one('desde la esquina izquierda'),
  'drapery/from-right-corner': one('desde la esquina derecha'),
  'drapery/corner-room': one('Todos los soportes libran el giro de la barra; el más cercano por {room}.'),
  'drapery/corner-room.fail': one(
    'Un soporte queda {room} dentro de la esquina, donde la barra ya giró.',
    'Aléjelo de la esquina al menos esa medida, antes de marcar nada.',
  ),
  'drapery/corner-room.unknown': one('Aún no se sabe si los soportes libran las esquinas.'),
  'drapery/overlap': one('El cruce de {ordered} es el que hacen los brazos.'),
  'drapery/overlap.fail': one(
    '{arms, select, yes {Se pidió un cruce de {ordered}; los brazos hacen {made}.} other {Se pidió un cruce de {ordered} en una barra sin brazos.}}',
    '{arms, select, yes {Entre los dos, los paños quedarían {apart} más {way, select, more {anchos} other {estrechos}}: pregunte al taller qué vale.} other {Los bordes de cierre solo pueden juntarse; los paños sobran {apart} entre los dos. Pregunte al taller.}}',
  ),
  'drapery/overlap.unknown': one('Aún no se sabe cuánto se cruzan los bordes de cierre.'),
  'drapery/ceiling-clears': one(
    'Bajo el techo los dobladillos libran {left} a la izquierda, {middle} en el centro y {right} a la derecha; se pidieron {clearance}.',
  ),
  'drapery/ceiling-clears.warn': one(
    'Bajo el techo los dobladillos libran {left}, {middle} y {right} de izquierda a derecha; {where} quedan {off} demasiado {way, select, high {altos} other {bajos}}.',
    'Eso lo absorben los ganchos; los soportes se quedan en el techo.',
  ),
  'drapery/ceiling-clears.fail': one(
    'Bajo el techo los dobladillos libran {left}, {middle} y {right} de izquierda a derecha y se pidieron {clearance}; {where} quedan {off} demasiado {way, select, high {altos} other {bajos}}.',
    'Es más de lo que absorben los ganchos: calzas bajo un soporte, o el paño vuelve. Llame al taller antes de colgarlo.',
  ),
  'drapery/ceiling-clears.unknown': one('Aún no se sabe cuánto libran los dobladillos bajo el techo.'),
}
