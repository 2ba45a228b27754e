import type { Words } from '@evenhem/plugin'
import type { reportWords } from './report.ts'
import { one } from './sentence.ts'

export const reportWordsEs: Readonly<Record<keyof typeof reportWords, Words[string]>> = {
  'drapery/entry-lead': one(
    '{draw, select, pair {Un par de paños {lined, select, yes {forrados, con pliegues} other {con pliegues}}. Cerrados, sobrepasan el marco {sides, select, alike {{left} de cada lado} other {{left} a la izquierda y {right} a la derecha}} y {lies, select, yes {descansan {clearance} sobre el piso} other {{to, select, sill {terminan {clearance} por encima del alféizar} apron {terminan {clearance} por debajo del faldón} other {{even, select, yes {quedan a {clearance} del piso} other {quedan a {clearance} o más del piso}}}}}}.} one {Un paño {lined, select, yes {forrado, con pliegues} other {con pliegues}} que se abre hacia un lado. Cerrado, sobrepasa el marco {sides, select, alike {{left} de cada lado} other {{left} a la izquierda y {right} a la derecha}} y {lies, select, yes {descansa {clearance} sobre el piso} other {{to, select, sill {termina {clearance} por encima del alféizar} apron {termina {clearance} por debajo del faldón} other {{even, select, yes {queda a {clearance} del piso} other {queda a {clearance} o más del piso}}}}}}.} other {{count, plural, one {Un paño {lined, select, yes {forrado, con pliegues} other {con pliegues}} que se queda donde cuelga. {lies, select, yes {Descansa {clearance} sobre el piso} other {{to, select, sill {Termina {clearance} por encima del alféizar} apron {Termina {clearance} por debajo del faldón} other {{even, select, yes {Queda a {clearance} del piso} other {Queda a {clearance} o más del piso}}}}}}.} other {# paños {lined, select, yes {forrados, con pliegues} other {con pliegues}} que se quedan donde cuelgan. {lies, select, yes {Descansan {clearance} sobre el piso} other {{to, select, sill {Terminan {clearance} por encima del alféizar} apron {Terminan {clearance} por debajo del faldón} other {{even, select, yes {Quedan a {clearance} del piso} other {Quedan a {clearance} o más del piso}}}}}}.}}}}',
  ),
  'drapery/entry-lead.short': one(
    '{draw, select, pair {Un par de paños {lined, select, yes {forrados, con pliegues} other {con pliegues}}. Se prevé que} other {Un paño {lined, select, yes {forrado, con pliegues} other {con pliegues}}. Se prevé que}} {to, select, sill {el dobladillo termine {clearance} por encima del alféizar.} apron {el dobladillo termine {clearance} por debajo del faldón.} other {el dobladillo quede a {clearance} del piso.}}',
  ),
  'drapery/entry-panels': one('Paños: {count}, de {pleats} pliegues'),
  'drapery/entry-length': one('Largo {side}: {length}'),
  'drapery/entry-fabric': one('Tela: {fabric}{fibres, select, none {} other { ({fibres})}}'),
  'drapery/entry-lining': one('Forro: {lining}'),
  'drapery/entry-hem': one('Dobladillo: {hem}'),
  'drapery/entry-hem-side': one('Dobladillo {side}: {hem}'),
  'drapery/entry-care': one(
    'Mueva los paños por el borde de cierre, cerca de arriba. Quíteles el polvo con un cepillo suave. Antes de lavar nada, consulte a una tintorería que conozca las cortinas forradas.',
  ),
  'drapery/entry-safe': one(
    'Sin cordones. Mantenga los paños lejos de fuentes de calor. No se cuelgue de la barra ni trepe por ella.',
  ),
}
