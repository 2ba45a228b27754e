import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'
import type { workWords } from './work.ts'

export const workWordsEs: Readonly<Record<keyof typeof workWords, Words[string]>> = {
  'drapery/unpack': one('Desempaque sobre una cubierta limpia y cuente.'),
  'drapery/unpack.why': one(
    '{count, plural, one {# paño} other {# paños}}: {bags}. Lo que falta, mejor saberlo ahora que en la escalera.',
  ),
  'drapery/unpack.done': one('Está todo'),
  'drapery/measure-panels': one('Mida cada paño por su borde de cierre, extendido en plano.'),
  'drapery/measure-panels.why': one(
    'De la cabecilla al dobladillo. Permitido ± {off}. La barra se coloca según los paños que llegaron, no según los pedidos.',
  ),
  'drapery/measure-panels.done': one('Paños medidos'),
  'drapery/measure-window': one('Mida el marco, y el piso debajo de cada soporte.'),
  'drapery/measure-window.why': one('El dobladillo sigue el piso más alto; cada agujero, su propio piso.'),
  'drapery/measure-window.done': one('Ventana medida'),
  'drapery/mark-bracket': one('Marque con lápiz {count, plural, one {una cruz} other {# cruces}} para el soporte {side}.'),
  'drapery/mark-bracket.why': one(
    'Las alturas son desde el piso justo debajo de este soporte, para que la barra quede a nivel sobre cualquier piso.',
  ),
  'drapery/mark-bracket.done': one('Cruces hechas'),
  'drapery/mark-support': one('Marque con lápiz {count, plural, one {una cruz} other {# cruces}} para el apoyo.'),
  'drapery/mark-support.why': one(
    'Un apoyo sostiene la barra entre los soportes; sus alturas son desde el piso justo debajo de él.',
  ),
  'drapery/mark-support.done': one('Cruces hechas'),
  'drapery/drill-wood': one('Taladre el agujero superior de cada soporte.'),
  'drapery/drill-wood.why': one(
    'Detrás de esta pared hay madera. Un tornillo por soporte, primero el de arriba, hasta comprobar el dobladillo; después los demás.',
  ),
  'drapery/drill-wood.done': one('Agujeros superiores hechos'),
  'drapery/drill-all': one('Taladre todos los agujeros de cada soporte.'),
  'drapery/drill-all.why': one(
    'Detrás de esta pared hay madera, pero un solo tornillo por soporte sostendría demasiado poco para lo que cuelga aquí, o no se sabe: van todos los tornillos antes de colgar nada.',
  ),
  'drapery/drill-all.done': one('Agujeros taladrados'),
  'drapery/drill-other': one('Taladre todos los agujeros de cada soporte para sus anclajes.'),
  'drapery/drill-other.why': one(
    'No consta que haya madera detrás de esta pared: un solo tornillo no debe cargar la barra. Siga las instrucciones del fabricante del anclaje.',
  ),
  'drapery/drill-other.done': one('Agujeros hechos'),
  'drapery/clear': one('{remove, select, none {Repare lo que haya que reparar.} other {Quite lo que cuelga aquí: {remove}.}}'),
  'drapery/clear.why': one(
    '{patch, select, none {No hay nada que reparar.} other {Por reparar: {patch}.}} Los agujeros nuevos no deben dar con los viejos.',
  ),
  'drapery/clear.done': one('Despejado'),
  'drapery/set-up': one('Prepárese para trabajar a {height} del piso.'),
  'drapery/set-up.why': one(
    '{high, select, yes {Es más de {most}: dos personas, o un andamio.} other {Una escalera desde la que esta altura se alcance con comodidad; el mejor peldaño es aquel desde el que no hay que estirarse.}}',
  ),
  'drapery/set-up.done': one('Preparado'),
  'drapery/check-level': one('Ponga el nivel desde las primeras marcas hasta las últimas.'),
  'drapery/check-level.why': one(
    'Las marcas desde el piso, desde el cabezal del marco y desde el techo deben concordar dentro de {near}. Si no, decida con qué comparará el ojo la barra antes de taladrar.',
  ),
  'drapery/check-level.done': one('Marcas a nivel'),
  'drapery/trial': one('Cuelgue un paño de dos ganchos y mida su dobladillo.'),
  'drapery/trial.why': one(
    'Todas las fijaciones están puestas, así que el largo se comprueba antes de colgar todo el peso. Los ganchos aún pueden compensar un poco.',
  ),
  'drapery/trial.done': one('Largo comprobado'),
  'drapery/hang': one(
    '{draw, select, pair {Cuelgue los paños desde el punto de encuentro hacia afuera.} one {Cuelgue el paño desde su borde de cierre hacia afuera.} other {Cuelgue los paños desde sus bordes de cierre hacia afuera.}}',
  ),
  'drapery/hang.why': one('{count} ganchos, cada uno donde dice el mapa de ganchos.'),
  'drapery/hang.done': one('{draw, select, one {Paño colgado} other {Paños colgados}}'),
  'drapery/read-hem': one(
    '{draw, select, pair {Suelte los pliegues, cierre el par y mida el dobladillo en los dos bordes y en medio de cada paño.} one {Suelte los pliegues, cierre el paño y mida el dobladillo en los dos bordes y en medio.} other {Suelte los pliegues y mida el dobladillo en los dos bordes y en medio de cada paño.}}',
  ),
  'drapery/read-hem.why': one(
    '{lies, select, yes {Debe descansar {clearance} sobre el piso.} other {{to, select, sill {Debe terminar {clearance} por encima del alféizar.} apron {Debe terminar {clearance} por debajo del faldón.} other {Debe quedar a {clearance} del piso.}}}} Mídalo bajo los ganchos {alike, select, yes {{left} de cada paño} other {{left} del paño izquierdo y {right} del derecho}}, contados desde el borde de cierre.',
  ),
  'drapery/read-hem.done': one('Dobladillo correcto'),
  'drapery/all-screws': one('Ponga los tornillos que faltan.'),
  'drapery/all-screws.why': one('El largo está comprobado; ahora carga cada agujero de cada soporte.'),
  'drapery/all-screws.done': one('Todos los tornillos puestos'),
  'drapery/look-over-screws': one('Repase todas las fijaciones.'),
  'drapery/look-over-screws.why': one('Ahora cuelga todo; nada debe haberse movido.'),
  'drapery/look-over-screws.done': one('Todas firmes'),
  'drapery/hand-over': one(
    '{draw, select, pair {Abra y cierre el par cinco veces con el cliente, y muéstrele qué no tocar.} one {Abra y cierre el paño cinco veces con el cliente, y muéstrele qué no tocar.} other {Muestre al cliente que los paños se quedan donde cuelgan.}}',
  ),
  'drapery/hand-over.why': one(
    '{draw, select, pair {Abre y cierra sin trabas, se junta en el centro, dobladillos parejos, remates firmes, basura recogida.} one {Abre y cierra sin trabas, dobladillo parejo, remates firmes, basura recogida.} other {Pliegues y dobladillos parejos, remates firmes, basura recogida.}}',
  ),
  'drapery/hand-over.done': one('Entregado'),
  'drapery/caution-ladder': one(
    'Apoye la escalera en suelo firme y nivelado y mantenga los dos pies en ella. Siga las instrucciones de su fabricante y las normas locales.',
  ),
  'drapery/caution-drill': one('Busque cables y tubos antes de taladrar. El trabajo que exige licencia es de quien la tiene.'),
  'drapery/caution-dust': one(
    'Use gafas protectoras. La pintura vieja puede tener plomo, el yeso viejo asbesto: en caso de duda, deténgase y siga las normas locales.',
  ),
  'drapery/caution-tower': one(
    'A esta altura se trabaja entre dos personas o desde un andamio, armado según las instrucciones de su fabricante y las normas locales. Nadie sube solo.',
  ),
  'drapery/caution-lead': one(
    'Esta casa es lo bastante antigua para tener pintura con plomo: levante poco polvo, use mascarilla y gafas protectoras, y siga las normas locales para trabajar en ella.',
  ),
  'drapery/ladder-tool': one('escalera'),
  'drapery/tower': one('andamio'),
  'drapery/caution-lift': one('Alce lo largo o pesado entre dos personas.'),
  'drapery/clean-cover': one('cubierta limpia'),
  'drapery/tape': one('cinta métrica'),
  'drapery/level': one('nivel'),
  'drapery/pencil': one('lápiz'),
  'drapery/drill-tool': one('taladro'),
  'drapery/goggles': one('gafas protectoras'),
}
