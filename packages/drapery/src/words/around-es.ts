import type { Words } from '@evenhem/plugin'
import type { aroundWords } from './around.ts'
import { one } from './sentence.ts'

export const aroundWordsEs: Readonly<Record<keyof typeof aroundWords, Words[string]>> = {
  'drapery/panels-of-draw': one('{count, plural, one {Hay un paño} other {Hay # paños}} para {draw}, como se pidió.'),
  'drapery/panels-of-draw.fail': one(
    'Inesperado: {count, plural, one {un paño} other {# paños}} para {draw}; un par tiene dos que se abren a lados opuestos, una apertura hacia un lado tiene uno.',
    'Pida al taller que corrija en el pedido la apertura o los paños.',
  ),
  'drapery/panels-of-draw.unknown': one('Aún no se sabe si los paños corresponden a la apertura.'),
  'drapery/widths-agree': one('El ancho de la barra concuerda con lo que sobrepasa el marco: {covers}.'),
  'drapery/widths-agree.fail': one(
    'Por lo que sobrepasa el marco, la cortina cubre {covers}; por el ancho de la barra, {width}: {apart} de diferencia.',
    'Pida al taller que diga cuál de los dos vale, antes de marcar nada.',
  ),
  'drapery/widths-agree.unknown': one('Aún no se sabe si los dos caminos al ancho de la barra concuerdan.'),
  'drapery/obstacle': one(
    'El herraje queda a {apart} de lo que hay en la pared ({name, select, none {{thing}} other {{thing}, {name}}}).',
  ),
  'drapery/obstacle.fail': one(
    'El herraje {inside, select, yes {chocaría con} other {llega a {apart} de}} lo que hay en la pared ({name, select, none {{thing}} other {{thing}, {name}}}){away, select, yes {; debe quedar a {keep} o más} other {}}.',
    'Acuerde con el taller dónde pueden ir la barra o el soporte, o haga mover el obstáculo a quien esté autorizado, antes de marcar nada.',
  ),
  'drapery/obstacle.unknown': one(
    'Aún no se sabe si el herraje queda libre de lo que hay en la pared.',
    'Mida lo que hay en la pared: sus bordes izquierdo e inferior, su ancho y su alto.',
  ),
  'drapery/covered': one('La tela deja libre lo que hay en la pared ({name, select, none {{thing}} other {{thing}, {name}}}).'),
  'drapery/covered.warn': one(
    'La tela cuelga sobre lo que hay en la pared ({name, select, none {{thing}} other {{thing}, {name}}}).',
    'Pregunte al cliente y al taller; un detector o un rociador debe quedar libre según las normas locales.',
  ),
  'drapery/covered.unknown': one('Aún no se sabe si la tela cubre algo que deba quedar libre.'),
  'drapery/heater': one('La tela queda a {apart} de la fuente de calor ({thing}).'),
  'drapery/heater.warn': one(
    'La tela {over, select, yes {cuelga sobre} other {llega a {apart} de}} la fuente de calor ({thing}); se aconseja dejar {keep}.',
    'Corta el paso del calor. Mandan las instrucciones del fabricante; pregunte al cliente y al taller.',
  ),
  'drapery/heater.fail': one(
    'La tela {over, select, yes {cuelga sobre} other {llega a {apart} de}} el calefactor eléctrico; manténgala a {keep} o más y nunca la cuelgue delante.',
    'Puede encenderse aunque parezca apagado. No la cuelgue así: paños más cortos u otro lugar, según las instrucciones del fabricante y las normas locales.',
  ),
  'drapery/heater.unknown': one('Aún no se sabe cuánto se acerca la tela a una fuente de calor.'),
  'drapery/sash': one('Lo que abre hacia adentro pasa {room} por debajo de las anillas.'),
  'drapery/sash.fail': one(
    'Lo que abre hacia adentro llega hasta {top} de alto; le faltan {room} para pasar por debajo de la barra y las anillas.',
    'Suba la barra, o que el taller elija soportes de más proyección y se abra primero la cortina; acuérdelo antes de marcar nada.',
  ),
  'drapery/sash.unknown': one(
    'Aún no se sabe si lo que abre hacia adentro pasa por debajo de la barra.',
    'Ábralo y mida hasta qué altura entra en la habitación.',
  ),
  'drapery/stool': one('La tela pasa {room} por delante del alféizar.'),
  'drapery/stool.warn': one(
    'La tela pasa solo {room} por delante del alféizar; conviene al menos {least}.',
    'Rozará el alféizar. Ayudan soportes de más proyección.',
  ),
  'drapery/stool.fail': one(
    'El alféizar sobresale {room} más que la tela.',
    'La tela se apoyaría en él. Soportes de más proyección, o un dobladillo por encima del alféizar: acuérdelo con el taller antes de marcar nada.',
  ),
  'drapery/stool.unknown': one('Aún no se sabe si la tela pasa por delante del alféizar.'),
  'drapery/head-room': one(
    'Hay espacio por encima: {room} más de lo que {what, select, finial {necesitan los remates} other {necesita la barra, alzada {lift} para encajarla}}.',
  ),
  'drapery/head-room.fail': one(
    '{what, select, finial {Los remates necesitan} other {La barra, alzada {lift} para encajarla en sus soportes, necesita}} {room} más de lo que hay bajo {under, select, crown {la cornisa} other {el techo}}.',
    'Baje la barra, ponga remates más pequeños, o use soportes en los que la barra entre de lado: acuérdelo con el taller antes de marcar nada.',
  ),
  'drapery/head-room.unknown': one(
    'Aún no se sabe si la barra y los remates caben bajo el techo.',
    'Mida el techo encima de la barra.',
  ),
  'drapery/casing-edge': one('Cada soporte queda del todo sobre el marco o del todo sobre la pared.'),
  'drapery/casing-edge.fail': one(
    'El soporte {side} quedaría a medias sobre el marco.',
    'Ahí se balancea, y sus tornillos rajan el borde. Mueva el extremo de la barra o su altura, o calce la placa: acuérdelo con el taller antes de marcar nada.',
  ),
  'drapery/casing-edge.unknown': one('Aún no se sabe si los soportes quedan libres del borde del marco.'),
  'drapery/behind-wall': one('Cada soporte encuentra madera detrás de la pared.'),
  'drapery/behind-wall.warn': one(
    'No todos los soportes encuentran madera detrás de la pared; el primero que no la encuentra da con {behind}.',
    'Todas las fijaciones se ponen antes de colgar nada, elegidas según lo que su fabricante indica para esta pared y esta carga.',
  ),
  'drapery/behind-wall.unknown': one(
    'Aún no se sabe qué hay detrás de la pared donde van los soportes.',
    'Averígüelo antes de taladrar: golpee, pinche o use un detector.',
  ),
  'drapery/floor-read': one('El piso se midió en {count, plural, one {un punto} other {# puntos}}.'),
  'drapery/floor-read.fail': one(
    'Dos medidas del piso a {x} del borde izquierdo del marco no concuerdan.',
    'Mida allí otra vez y deje una sola.',
  ),
  'drapery/floor-read.unknown': one(
    'El piso no se midió aquí; se toma por nivelado.',
    'Mídalo en los dos extremos y en el medio, desde una línea de nivel.',
  ),
  'drapery/finished-floor': one('Las alturas se tomaron desde el piso terminado.'),
  'drapery/finished-floor.warn': one(
    'El piso no está terminado, o la cinta se apoyó en un contrapiso.',
    'El dobladillo errará por lo que se ponga encima. Pregunte al taller qué espesor se previó.',
  ),
  'drapery/finished-floor.unknown': one('Aún no se sabe desde qué piso se midió.'),
  'drapery/mount.unknown': one(
    'Los soportes se pidieron {mount}. Alturas y lugares se calculan como en una pared.',
    'Donde difieran, trabaje según las instrucciones del fabricante del herraje.',
  ),
  'drapery/mount': one('Se sabe dónde se fijan los soportes.'),
  'drapery/rod-needed': one('barra necesaria, de punta a punta'),
  'drapery/rod-as-cut': one('barra tal como se cortó'),
  'drapery/rod-over': one('barra que sobra'),
  'drapery/splice-apart': one('del empalme al apoyo más cercano'),
  'drapery/span-between': one('de soporte a soporte'),
  'drapery/bracket-to-bracket': one('de soporte a soporte'),
  'drapery/wall-fits': one('Los herrajes caben en la pared: sobran {left} a la izquierda y {right} a la derecha.'),
  'drapery/wall-fits.fail': one(
    'Al extremo {side} de los herrajes le faltan {short} de pared; hay {space}.',
    'Un remate o extremo más corto, o mover o cortar la barra: acuérdelo con el taller antes de marcar nada.',
  ),
  'drapery/wall-fits.unknown': one(
    'Aún no se sabe si los herrajes caben en la pared.',
    'Mida la pared libre a ambos lados, a la altura de la barra.',
  ),
  'drapery/rod-length': one('La barra alcanza: mide {cut} y hacen falta {needed}.'),
  'drapery/rod-length.warn': one(
    'La barra mide {off} más que los {needed} que pide el plan.',
    'Córtela, o sus extremos quedarán más afuera de lo previsto.',
  ),
  'drapery/rod-length.fail': one(
    'La barra está cortada a {cut}; hacen falta {needed}, {off} más.',
    'Apretaría lo que descansa en sus extremos, o no llegaría a sus soportes. Llame al taller antes de marcar nada.',
  ),
  'drapery/rod-length.unknown': one('Aún no se sabe si la barra alcanza.'),
  'drapery/splice-held': one('El empalme está a {apart} de un apoyo.'),
  'drapery/splice-held.fail': one(
    'El empalme está a {apart} del apoyo más cercano; {near} como máximo.',
    'Un empalme no carga por sí solo. Ponga un apoyo junto a él, o invierta la barra, antes de marcar nada.',
  ),
  'drapery/splice-held.unknown': one('Aún no se sabe si el empalme está sostenido.'),
  'drapery/span': one('De soporte a soporte hay {widest} como máximo; la barra admite {most}.'),
  'drapery/span.fail': one(
    'De soporte a soporte hay {widest}, {over} más de los {most} que permite su fabricante.',
    'Se vencería. Añada un apoyo, antes de marcar nada.',
  ),
  'drapery/span.unknown': one('Aún no se sabe si la barra queda con demasiado tramo sin apoyo.'),
  'drapery/around-corner': one(
    '{count, plural, =0 {La cortina se queda en una sola pared.} one {La cortina dobla una esquina de {angles}; sobre la barra cubre {rod}.} other {La cortina dobla # esquinas de {angles}; sobre la barra cubre {rod}.}}',
  ),
  'drapery/around-corner.unknown': one(
    'Aún no se sabe cómo dobla la cortina la esquina.',
    'Mida el ángulo entre las paredes, visto desde la habitación, y dónde acaban las paredes; los dos extremos de la barra deben quedar a igual distancia de la pared.',
  ),
  'drapery/layers': one('Las capas cuelgan a {apart} una delante de otra.'),
  'drapery/layers.fail': one(
    'Una capa cuelga a {apart} de la que tiene detrás; hacen falta {near}.',
    'Se rozarían y se engancharían. Soportes de más proyección para la capa exterior: acuérdelo con el taller antes de marcar nada.',
  ),
  'drapery/layers.unknown': one('Aún no se sabe si las capas cuelgan libres una de otra.'),
  'drapery/break': one('La tela descansa {lies} sobre el piso, {how, select, agreed {como se acordó} other {y cuelga quieta}}.'),
  'drapery/break.warn': one(
    'La tela descansaría {lies} sobre el piso y se arrastraría por él.',
    'Se gasta y se ensucia. Pregunte al cliente, o súbala con los ganchos o la barra.',
  ),
  'drapery/break.unknown': one('Aún no se sabe si la tela descansa sobre el piso.'),
  'drapery/pin-in-heading': one('Todos los ganchos quedan dentro de la cabecilla.'),
  'drapery/pin-in-heading.fail': one(
    'Los ganchos del {panel} están puestos a {pin} del borde superior; su cabecilla mide {height} de alto.',
    'Un gancho por debajo de la cabecilla rasga la tela. Mídalo otra vez; después llame al taller.',
  ),
  'drapery/pin-in-heading.unknown': one('Aún no se sabe si los ganchos quedan dentro de la cabecilla.'),
  'drapery/pins-alike': one('Los ganchos de todos los paños están puestos igual, a {first}.'),
  'drapery/pins-alike.warn': one(
    'Los ganchos del {panel} están puestos a {far}, los otros a {first}: {apart} de diferencia, permitido {near}.',
    'Póngalos iguales, a menos que los paños difieran en largo.',
  ),
  'drapery/pins-alike.unknown': one('Aún no se sabe si los ganchos están puestos igual.'),
  'drapery/pleat-spaces': one('Los espacios entre pliegues miden {widest} como máximo.'),
  'drapery/pleat-spaces.warn': one(
    '{how, select, wide {Los espacios entre pliegues llegan a {widest} de ancho, más de {most}.} other {Los espacios de los dos paños difieren en {apart}, más de {agree}.}}',
    '{how, select, wide {Pueden vencerse entre los ganchos.} other {Los paños se verán distintos al cerrarlos.}} Pregunte al taller.',
  ),
  'drapery/pleat-spaces.unknown': one('Aún no se sabe qué ancho tienen los espacios entre pliegues.'),
  'drapery/settling': one('La tela asienta {settles}, menos que su holgura de {clearance}.'),
  'drapery/settling.warn': one(
    'La tela asentará {settles}; queda a {clearance} del piso.',
    'Déjela colgar antes de hacer el dobladillo, o acuerde un día para volver a medir.',
  ),
  'drapery/settling.unknown': one('Aún no se sabe si la tela asienta hasta el piso.'),
  'drapery/lift': one('El paño más pesado pesa {mass}.'),
  'drapery/lift.warn': one(
    'El paño más pesado pesa {mass}; una persona no debe alzar más de {most}.',
    'Álcelo entre dos personas y cuélguelo en dos etapas.',
  ),
  'drapery/lift.unknown': one('Aún no se sabe cuánto pesan los paños.'),
  'drapery/ladder': one('La barra está a {height} del piso.'),
  'drapery/ladder.warn': one(
    'La barra está a {height} del piso, más de {most}.',
    'Trabaje con dos personas, o desde un andamio. Siga las normas locales.',
  ),
  'drapery/ladder.unknown': one('Aún no se sabe a qué altura se trabaja.'),
  'drapery/repeat-received': one('La repetición del dibujo de la tela es la pedida, {ordered}.'),
  'drapery/repeat-received.warn': one(
    'La repetición del dibujo de la tela que llegó es {received}; se pidió {ordered}.',
    'Pregunte al taller cómo se cortaron los paños: los dibujos pueden no coincidir.',
  ),
  'drapery/repeat-received.unknown': one('Aún no se sabe si la repetición del dibujo es la pedida.'),
  'drapery/ceiling-read': one('El techo se midió en {count} puntos.'),
  'drapery/ceiling-read.warn': one(
    'La barra se pidió desde el techo, y el techo {count, plural, =0 {no se midió en ningún punto} one {se midió en un solo punto} other {se midió en # puntos}} sobre esta ventana.',
    'Los techos rara vez están a nivel. Mídalo sobre los dos soportes y en el medio.',
  ),
  'drapery/ceiling-read.unknown': one('Aún no se sabe qué tan a nivel está el techo.'),
  'drapery/room-rods': one('Las barras de esta habitación están a nivel entre sí.'),
  'drapery/room-rods.warn': one(
    'Las barras de esta habitación difieren en {apart}, permitido {near}.',
    'El ojo las compara. Pregunte al taller si es a propósito.',
  ),
  'drapery/room-rods.unknown': one('Aún no se sabe si las barras de esta habitación están a nivel entre sí.'),
  'drapery/room-hems': one('Los dobladillos de esta habitación están a nivel entre sí.'),
  'drapery/room-hems.warn': one(
    'Los dobladillos de esta habitación difieren en {apart}, permitido {near}.',
    'Dobladillos a nivel sobre un piso que baja, o la misma distancia al piso en todas partes: elija una cosa para toda la habitación y ajuste los ganchos.',
  ),
  'drapery/room-hems.unknown': one('Aún no se sabe si los dobladillos de esta habitación están a nivel entre sí.'),
  'drapery/room-patterns': one('El dibujo empieza a una misma altura en esta habitación.'),
  'drapery/room-patterns.warn': one(
    'El dibujo de una misma tela empieza a alturas que difieren en {apart} en esta habitación, permitido {near}.',
    'Se nota desde el otro lado de la habitación. Pregunte al taller antes de colgar.',
  ),
  'drapery/room-patterns.unknown': one('Aún no se sabe si el dibujo empieza a una misma altura en esta habitación.'),
  'drapery/bag-labels': one('Las {count} bolsas tienen cada una su etiqueta.'),
  'drapery/bag-labels.fail': one(
    'Dos bolsas tienen la etiqueta «{bag}».',
    'Mida lo que hay en ellas y etiquételas de nuevo antes de colgar nada.',
  ),
  'drapery/bag-labels.unknown': one('Aún no se sabe si cada bolsa tiene su propia etiqueta.'),
}
