import type { Words } from '@evenhem/plugin'
import type { loadWords } from './loads.ts'
import { one } from './sentence.ts'

const estimate =
  'Es una estimación, no el certificado de un ingeniero; siga los códigos locales y las instrucciones de la fijación.'

export const loadWordsEs: Readonly<Record<keyof typeof loadWords, Words[string]>> = {
  'drapery/sag': one(
    'La barra cede como mucho {sag}, {when}; ahí se admiten {most}{strict, select, maker {; de los dos, es más estricta la separación máxima de su fabricante, {span}} other {}}.',
  ),
  'drapery/sag.warn': one(
    'La barra cedería {sag} a {x} del borde izquierdo del marco, {when}; ahí se admiten {most}.',
    `Ayuda un apoyo cerca de ahí, o una barra más rígida: acuérdelo con el taller. ${estimate}`,
  ),
  'drapery/sag.fail': one('La barra cede demasiado.', estimate),
  'drapery/sag.folds': one(
    'La barra se dobla en su empalme: nada sostiene el empalme.',
    'Ponga un apoyo bajo el empalme, o use uno que no gire. Así no se cuelga la barra.',
  ),
  'drapery/sag.unknown': one('Aún no se sabe cuánto cede la barra.'),
  'drapery/sag.weights': one(
    'Aún no se sabe cuánto cede la barra ni qué cargan sus soportes: el pedido no dice cuánto pesan los paños.',
    'Pese un paño en su bolsa, o que el taller dé su peso, o el peso de la tela y del forro.',
  ),
  'drapery/sag.rod': one(
    'Aún no se sabe cuánto cede la barra ni qué cargan sus soportes: el pedido no dice cuánto pesa la barra.',
    'Lo dicen su material y su sección, o su peso por metro.',
  ),
  'drapery/sag.stiffness': one(
    'Aún no se sabe cuánto cede la barra: el pedido no dice lo rígida que es.',
    'Lo dicen su material y su sección, si es maciza o un tubo cerrado; en una barra con ranura vale la separación máxima de su fabricante.',
  ),
  'drapery/sag.corner': one(
    'No se calcula cuánto cede una barra que dobla una esquina, ni qué cargan sus soportes.',
    'Las instrucciones de su fabricante dicen dónde se sostiene.',
  ),
  'drapery/rod-lifts': one('La barra descansa en todos sus soportes, corridos los paños como sea.'),
  'drapery/rod-lifts.warn': one(
    'La barra se levantaría {bracket, select, left {del soporte izquierdo} right {del soporte derecho} other {del apoyo a {x} del borde izquierdo del marco}}, con {mass}.',
    `Un soporte abierto no puede retenerla: fije ahí la barra con su tornillo o una presilla. ${estimate}`,
  ),
  'drapery/rod-lifts.unknown': one('Aún no se sabe si la barra descansa en todos sus soportes.'),
  'drapery/holds': one('Se usa como mucho el {used} % de {by}, donde cuelgan {mass} de un soporte.'),
  'drapery/holds.fail': one(
    '{bracket, select, left {El soporte izquierdo} right {El soporte derecho} other {El apoyo a {x} del borde izquierdo del marco}} carga {mass}: el {used} % de {by}.',
    `No taladre así. {enough, select, none {Otras fijaciones, más apoyos u otros soportes} other {Un tornillo de madera {enough} lo sostendría; también pueden más apoyos u otros soportes}}: acuérdelo con el taller. ${estimate}`,
  ),
  'drapery/holds.short': one(
    'El tornillo {fastener} entra demasiado poco en la madera detrás {bracket, select, left {del soporte izquierdo} right {del soporte derecho} other {del apoyo a {x} del borde izquierdo del marco}}, que carga {mass}.',
    `Un tornillo cuenta desde seis diámetros dentro de la madera{enough, select, none {} other {; uno de {enough} lo sostendría}}. Tome uno más largo. ${estimate}`,
  ),
  'drapery/holds.unknown': one(
    'No se sabe si {bracket, select, left {el soporte izquierdo} right {el soporte derecho} other {el apoyo a {x} del borde izquierdo del marco}} sostiene los {mass} que cuelgan de él: {lacks}.',
    `Solo cuenta lo que está declarado; no se supone nada. ${estimate}`,
  ),
  'drapery/supports': one(
    '{count, plural, =0 {Los dos soportes bastan para esta barra.} one {Los soportes y el apoyo bastan para esta barra.} other {Los soportes y los # apoyos bastan para esta barra.}}',
  ),
  'drapery/supports.warn': one(
    'Apoyada de otro modo, la barra aguanta: {ways, plural, one {hay una forma calculada} other {hay # formas calculadas}}.',
    'Primero la de menos agujeros. Busque cada montante con un punzón antes de taladrar.',
  ),
  'drapery/supports.none': one(
    'No se halló forma de sostener esta barra ni con tres apoyos más.',
    'Una barra más rígida, otros soportes u otras fijaciones: acuérdelo con el taller.',
  ),
  'drapery/supports.unknown': one('Aún no se sabe si la barra necesita más apoyos.'),
  'drapery/way-supports': one(
    '{count, plural, one {Un apoyo a {a}} =2 {Apoyos a {a} y {b}} =3 {Apoyos a {a}, {b} y {c}} other {Apoyos a {a}, {b}, {c} y {d}}} del borde izquierdo del marco{on, select, studs {, en montantes} other {}}: se usa el {sag} % de lo que puede ceder y el {holds} % de lo que sostienen los soportes.',
  ),
  'drapery/when-drawn': one('cerrada'),
  'drapery/when-stacked': one('abierta'),
  'drapery/when-between': one('a medio correr'),
  'drapery/by-fasteners': one('lo que sostienen sus tornillos'),
  'drapery/by-maker': one('lo que admite su fabricante'),
  'drapery/lacks-holes': one('dónde están los agujeros de su placa, y cuánto mide de alto'),
  'drapery/lacks-no-fastener': one('con qué se fija en esta pared; mire la caja de la fijación y anote lo que declara'),
  'drapery/lacks-wall': one('qué hay detrás de la pared ahí; busque un montante'),
  'drapery/lacks-board': one('el espesor del tablero que atraviesa el tornillo, o para el que la fijación está declarada'),
  'drapery/lacks-end-grain': one('ningún tornillo se carga a testa'),
  'drapery/lacks-gravity': one('no hay valor publicado para esa madera'),
  'drapery/lacks-size': one('no hay valor publicado para un tornillo de ese tamaño'),
  'drapery/lacks-penetration': one('el tornillo entra demasiado poco en la madera'),
  'drapery/lacks-margin': one('entre cuánto se divide su carga última; lo dice su declaración o el código'),
  'drapery/lacks-not-listed': one(
    'qué declara su fabricante para esta pared, hacia fuera y a lo largo de ella; búsquelo y anótelo',
  ),
  'drapery/assume-creep': one('La madera cede la mitad más con los años (NDS 2018, 3.5.2).'),
  'drapery/assume-wood': one('Nadie dice de qué madera es la barra: se cuenta con la menos rígida y la más pesada.'),
  'drapery/assume-acrylic': one('El acrílico sigue cediendo bajo carga; solo se cuenta lo que cede al principio.'),
  'drapery/assume-bearers': one('No se pesan las anillas ni los corredores: el pedido no dice cuánto pesan.'),
  'drapery/assume-finials': one('No se pesan los remates: el pedido no dice cuánto pesan.'),
  'drapery/assume-all': one(
    'No se pesan las cintas ni los ganchos, ni los plomos de los que nadie dice el peso, ni quien tire de la tela. Todo el paño cuelga de la barra.',
  ),
  'drapery/assume-screws': one(
    'Los tornillos se cuentan para una carga que permanece, a través de la fibra y con agujeros guía según su norma; el tablero entre placa y madera no sostiene nada.',
  ),
  'drapery/estimate': one(estimate),
  'drapery/rod-whole': one('largo de la barra'),
  'drapery/rod-weight': one('peso de la barra'),
  'drapery/kilograms-a-metre': one('kilogramos por metro'),
  'drapery/weight-of-rod': one(
    'Un largo por lo que pesa un metro: el área de su sección por su densidad (fuentes: mechanics, materials y woods).',
  ),
  'drapery/cloth-long': one('largo de la tela con dobladillo y cabezal'),
  'drapery/hem-weights': one('pesos del dobladillo'),
  'drapery/bearers-weight': one('peso de anillas o corredores'),
  'drapery/bearer-weight': one('peso de una anilla o un corredor'),
  'drapery/hook-count': one('ganchos'),
  'drapery/panel-load': one('paño con aquello de lo que cuelga'),
  'drapery/finial-weight': one('peso de un remate'),
  'drapery/bracket-load': one('carga en el soporte'),
  'drapery/bracket-load-least': one('carga mínima en el soporte'),
  'drapery/continuous-beam': one(
    'Una barra sobre varios soportes, por el teorema de los tres momentos (Kassimali, Structural Analysis, ec. D.10); lo peor de cerrada, abierta y a medio correr. Comprobado con tablas publicadas (AISC Steel Construction Manual, tabla 3-23).',
  ),
  'drapery/sag-x': one('dónde cede más'),
  'drapery/largest-sag': one('cuánto cede como mucho'),
  'drapery/sag-most': one('cuánto se admite que ceda'),
  'drapery/sag-part': one('una parte en'),
  'drapery/part-of-span': one(
    'La distancia entre dos soportes dividida por ese número. No se halló ningún límite publicado para barras; el número se elige.',
  ),
  'drapery/stiffness': one('rigidez en N·m²'),
  'drapery/creep': one('veces lo mismo con los años'),
  'drapery/bracket-holds': one('todo lo que cuelga del soporte'),
  'drapery/screw-pull': one('tracción en el tornillo más cargado'),
  'drapery/screw-shear': one('corte en un tornillo'),
  'drapery/plate-tilts': one(
    'La carga por la proyección, que toman los tornillos: como par del más alto y el más bajo (estática) y como placa que gira sobre su borde inferior (Bhandari, Design of Machine Elements, capítulo 7); cuenta lo mayor.',
  ),
  'drapery/plate-height': one('alto de la placa'),
  'drapery/hole-count': one('agujeros'),
  'drapery/used': one('parte usada de lo que sostiene el tornillo'),
  'drapery/used-by-one': one('lo mismo solo con el tornillo de arriba'),
  'drapery/screw-holds': one(
    'En madera, tracción y corte juntos contra los valores publicados para una carga que permanece (NDS 2018, ec. 12.2-2, 12.3 y 12.4-1; a través de un tablero según AWC TR 12, de memoria); en lo demás, contra lo que declara la fijación.',
  ),
  'drapery/of-rated': one('parte de lo que admite su fabricante'),
  'drapery/rated': one('lo que admite su fabricante'),
  'drapery/load-over-rated': one('La carga entre el peso que admite su fabricante.'),
}
