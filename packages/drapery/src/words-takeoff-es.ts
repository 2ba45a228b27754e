import type { Words } from '@evenhem/plugin'
import type { takeoffWords } from './words-takeoff.ts'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

/** The same codes as in English. */
export const takeoffWordsEs: Readonly<Record<keyof typeof takeoffWords, Words[string]>> = {
  'drapery/cloth-face': one('tela'),
  'drapery/cloth-lining': one('forro'),
  'drapery/cloth-interlining': one('entretela'),
  'drapery/fullness': one('amplitud'),
  'drapery/fullness-percent': one('amplitud en por ciento'),
  'drapery/percent-beyond': one(
    'el ancho entero una vez, y ese por ciento de más',
    'La otra lectura de la amplitud en por ciento: un 100 por ciento de más es el doble de tela (fichas de estudio de interiorismo; leído).',
  ),
  'drapery/fabric-width': one('ancho de la tela'),
  'drapery/seam-edge': one('costura en un orillo'),
  'drapery/usable-width': one('lo que da un ancho de tela'),
  'drapery/flat-asked': one('ancho plano para su amplitud'),
  'drapery/face-width': one('lo que cubre el paño'),
  'drapery/face-full': one('eso, con su amplitud'),
  'drapery/side-hem': one('dobladillo lateral'),
  'drapery/side-hems': one('dobladillos laterales'),
  'drapery/both-sides': one('ambos lados'),
  'drapery/cloth-layers': one('capas'),
  'drapery/cut-width': one('ancho de corte'),
  'drapery/widths-exact': one('anchos de tela, sin redondear'),
  'drapery/widths': one('anchos de tela'),
  'drapery/widths-up': one('redondeado hacia arriba a anchos enteros', 'Como hace la mayoría de las fuentes publicadas.'),
  'drapery/widths-half-up': one(
    'redondeado hacia arriba a medios anchos',
    'Anchos enteros o medios: UFGS-12491N, párrafo 2.2.1.1, Departamento de Defensa de EE. UU. (leído). El medio ancho va del lado del retorno.',
  ),
  'drapery/widths-nearest': one(
    'redondeado al ancho entero más cercano',
    'Johnston, Curtains, Departamento de Agricultura de Nueva Zelanda, 1955 (leído).',
  ),
  'drapery/cuts': one('largos que cortar'),
  'drapery/cuts-for-widths': one(
    'un largo por cada ancho',
    'Un medio ancho se saca de un largo entero; de uno salen dos mitades.',
  ),
  'drapery/turned-height': one('alto'),
  'drapery/hem-allowance': one('dobladillo inferior'),
  'drapery/heading-allowance': one('cabecilla'),
  'drapery/length-allowance': one('todo lo que se corta de más'),
  'drapery/cut-extra': one('de más para trabajar'),
  'drapery/length-needed': one('largo necesario'),
  'drapery/size-of-face': one('como se corta la tela'),
  'drapery/less-than-face': one('menos que la tela'),
  'drapery/repeat': one('repetición del dibujo'),
  'drapery/repeats': one('repeticiones'),
  'drapery/repeats-up': one(
    'redondeado hacia arriba a repeticiones enteras',
    'Nunca hacia abajo: Merrick & Day, Encyclopaedia of Curtains, 1996, p. 116 (leído).',
  ),
  'drapery/cut-length': one('largo de corte'),
  'drapery/rest-of-cut': one('sobrante de cada corte'),
  'drapery/half-drop-extra': one('por el dibujo saltado'),
  'drapery/nothing': one('nada'),
  'drapery/half-drop-once': one(
    'media repetición, una vez',
    'Nada donde el sobrante de un corte es de media repetición o más: primero se cortan todos los largos A, se deja media repetición y luego todos los B (foro de tapicería; leído).',
  ),
  'drapery/half-drop-alternate': one(
    'media repetición en uno de cada dos largos',
    'Nombrado junto a las otras reglas en nuestra referencia; no se halló un caso resuelto.',
  ),
  'drapery/cuts-together': one('todos los largos juntos'),
  'drapery/cloth-needed': one('tela necesaria'),
  'drapery/placing-extra': one('para colocar el dibujo'),
  'drapery/yard': one('una yarda'),
  'drapery/cloth-wanted': one('tela que se quiere'),
  'drapery/cloth-ordered': one('tela que pedir'),
  'drapery/sold-up': one(
    'redondeado hacia arriba a lo que vende el proveedor',
    'Nunca hacia abajo: lo que se recorta es tela que falta.',
  ),
  'drapery/sold-step': one('paso en que se vende'),
  'drapery/areal-weight': one('kilogramos por metro cuadrado'),
  'drapery/cloth-weight': one('peso de la tela'),
  'drapery/weight-of-area': one(
    'peso de una superficie: por su ancho y su largo',
    'Con todos los dobladillos, como se corta; lo que sobra por la repetición no se cuenta.',
  ),
  'drapery/panel-weight': one('peso del paño'),
  'drapery/flat-less': one('ancho plano menos lo que pide la amplitud'),
  'drapery/fullness-held': one('El ancho plano del pedido da la amplitud que se pide ({panel}: {ordered}).'),
  'drapery/fullness-held.warn': one(
    'Ancho plano inesperado de {ordered} del {panel}, se esperaba {way, select, bare {al menos {asked}, su ancho terminado: {off} menos} short {{asked} para su amplitud: {off} menos} other {{asked} para su amplitud: {off} más}}.',
    '{way, select, bare {La amplitud en por ciento puede ser del ancho o de más: dígalo en la regla percentMeans del taller.} short {Sus pliegues serán más pobres que lo pedido. Cambie el ancho plano o la amplitud.} other {La tela contada no lo da. Cambie el ancho plano o la amplitud.}}',
  ),
  'drapery/cut-holds': one('Cada corte de {cut} alcanza para los {needed} que hacen falta; sobran {rest}.'),
  'drapery/cut-holds.fail': one(
    'Corte inesperado de {cut}, se esperaban {needed} con dobladillo y cabecilla: faltan {rest}.',
    'El sobrante de la repetición no da para los dobladillos. Divida el largo de corte por la repetición (la regla repeatOf del taller), o corte una repetición más.',
  ),
}
