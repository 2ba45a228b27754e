import type { Words } from '@evenhem/plugin'
import type { loadWords } from './loads.ts'
import { one } from './sentence.ts'

const estimate =
  'Es una estimación, no el certificado de un ingeniero; siga los códigos locales y las instrucciones de la fijación.'

export const loadWordsEs: Readonly<Record<keyof typeof loadWords, Words[string]>> = {
  'drapery/sag': one(
    'En el peor sitio la barra se comba {sag}, {when}; ahí se admiten {most}{strict, select, maker {; de los dos, es más estricta la separación máxima de su fabricante, {span}} other {}}.',
  ),
  'drapery/sag.warn': one(
    'La barra se combaría {sag} a {x} del borde izquierdo del marco, {when}; ahí se admiten {most}.',
    `Ayuda otro apoyo o una barra más rígida: acuérdelo con el taller. ${estimate}`,
  ),
  'drapery/sag.fail': one('La barra se comba demasiado.', estimate),
  'drapery/sag.folds': one(
    'La barra se pliega en su empalme, o una pieza queda suelta: nada sostiene el empalme.',
    'Ponga un apoyo bajo el empalme, o use uno que no gire. Así no se cuelga la barra.',
  ),
  'drapery/sag.unknown': one('Aún no se sabe cuánto se comba la barra.'),
  'drapery/sag.weights': one(
    'Aún no se sabe cuánto se comba la barra ni qué cargan sus soportes: el pedido no dice cuánto pesan los paños.',
    'Pese un paño en su bolsa, o que el taller dé su peso, o el peso de la tela y del forro.',
  ),
  'drapery/sag.rod': one(
    'Aún no se sabe cuánto se comba la barra ni qué cargan sus soportes: el pedido no dice cuánto pesa la barra.',
    'Lo dicen su material y su sección, o su peso por metro.',
  ),
  'drapery/sag.stiffness': one(
    'Aún no se sabe cuánto se comba la barra: el pedido no dice lo rígida que es.',
    'Lo dicen su material y su sección, si es maciza o un tubo cerrado; en una barra con ranura vale la separación máxima de su fabricante.',
  ),
  'drapery/sag.places': one(
    'No se calcula cuánto se comba la barra ni qué cargan sus soportes: dos apoyos están en un mismo lugar, o uno más allá de los soportes.',
    'Que el taller corrija el lugar de los apoyos.',
  ),
  'drapery/sag.corner': one(
    'No se calcula cuánto se comba una barra que dobla una esquina, ni qué cargan sus soportes.',
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
  'drapery/holds.thin': one(
    'La madera detrás {bracket, select, left {del soporte izquierdo} right {del soporte derecho} other {del apoyo a {x} del borde izquierdo del marco}}, que carga {mass}, es demasiado delgada para que cuente el tornillo {fastener}.',
    `Un tornillo cuenta desde seis diámetros dentro de la madera, y uno más largo no ayuda ahí: otros soportes u otro sitio, acordado con el taller. ${estimate}`,
  ),
  'drapery/holds.lacks': one(
    'No se sabe si {bracket, select, left {el soporte izquierdo} right {el soporte derecho} other {el apoyo a {x} del borde izquierdo del marco}} sostiene los {mass} que cuelgan de él. Falta: {lacks}.',
    `Solo cuenta lo que está declarado; no se supone nada. ${estimate}`,
  ),
  'drapery/holds.unknown': one('Aún no se sabe si los soportes sostienen lo que cuelga de ellos.'),
  'drapery/supports': one(
    '{count, plural, =0 {Los dos soportes bastan para esta barra.} one {Los soportes y el apoyo bastan para esta barra.} other {Los soportes y los # apoyos bastan para esta barra.}}',
  ),
  'drapery/supports.warn': one(
    'Apoyada de otro modo, la barra aguanta: {ways, plural, one {hay una forma calculada} other {hay # formas calculadas}}.',
    'Primero la de menos agujeros.{on, select, studs { Busque cada montante con un punzón antes de taladrar.} other {}}',
  ),
  'drapery/supports.none': one(
    'Más apoyos solos no bastan para esta barra: ni con tres más se halló una forma.',
    'Una barra más rígida, otros soportes u otras fijaciones: acuérdelo con el taller.',
  ),
  'drapery/supports.unknown': one('Aún no se sabe si la barra necesita más apoyos.'),
  'drapery/way-screws': one('Poner en su lugar tornillos de madera {screw} en cada montante.'),
  'drapery/way-supports': one(
    '{count, plural, one {Un apoyo a {a}} =2 {Apoyos a {a} y {b}} =3 {Apoyos a {a}, {b} y {c}} other {Apoyos a {a}, {b}, {c} y {d}}} del borde izquierdo del marco{on, select, studs {, en montantes} other {}}: {known, select, yes {se usa el {sag} % de lo que puede combarse y el {holds} % de lo que sostienen los soportes} other {se usa el {sag} % de lo que puede combarse; lo que sostienen los soportes no se sabe}}.',
  ),
  'drapery/when-drawn': one('cerrada'),
  'drapery/when-stacked': one('abierta'),
  'drapery/when-between': one('a medio correr'),
  'drapery/by-fasteners': one('lo que sostienen sus fijaciones'),
  'drapery/by-maker': one('lo que admite su fabricante'),
  'drapery/lacks-holes': one('dónde están los agujeros de su placa, cuánto mide de alto y cuánto sale la barra'),
  'drapery/lacks-second-rod': one('lo que le carga la segunda barra de sus soportes dobles'),
  'drapery/lacks-no-fastener': one('con qué se fija en esta pared; mire la caja de la fijación y anote lo que declara'),
  'drapery/lacks-wall': one('qué hay detrás de la pared ahí; busque un montante'),
  'drapery/lacks-board': one('el espesor del tablero que atraviesa el tornillo, o para el que la fijación está declarada'),
  'drapery/lacks-gravity': one('no hay valor publicado para esa madera'),
  'drapery/lacks-size': one('no hay valor publicado para un tornillo de ese tamaño'),
  'drapery/lacks-penetration': one('el tornillo entra demasiado poco en la madera'),
  'drapery/lacks-margin': one('entre cuánto se divide su carga última; lo dice su declaración o el código'),
  'drapery/lacks-not-listed': one(
    'qué declara su fabricante para esta pared, hacia fuera y a lo largo de ella; búsquelo y anótelo',
  ),
  'drapery/assume-creep': one('La madera se comba la mitad más con los años (NDS 2018, 3.5.2).'),
  'drapery/assume-wood': one('Nadie dice de qué madera es la barra: se cuenta con la menos rígida y la más pesada.'),
  'drapery/assume-acrylic': one('El acrílico sigue combándose bajo carga; solo se cuenta lo del principio.'),
  'drapery/assume-bearers': one('No se pesan las anillas ni los corredores: el pedido no dice cuánto pesan.'),
  'drapery/assume-finials': one('No se pesan los remates: el pedido no dice cuánto pesan.'),
  'drapery/assume-all': one(
    'No se pesan las cintas ni los ganchos, ni los plomos de los que nadie dice el peso, ni quien tire de la tela. Todo el paño cuelga de la barra.',
  ),
  'drapery/assume-screws': one(
    'Los tornillos se cuentan para una carga que permanece, a través de la fibra y con agujeros guía según su norma; el tablero entre placa y madera no sostiene nada.',
  ),
  'drapery/assume-even': one(
    'La tela de un paño se reparte por igual en lo que cubre. Amontonada a mano en su borde de cierre puede cargar un quinto más en un apoyo.',
  ),
  'drapery/assume-line': one(
    'Soportes y apoyos están en línea hasta que se lean. Con una barra rígida, uno que queda 1/16 in alto carga mucho más: léalos antes de fijar nada del todo.',
  ),
  'drapery/assume-not': one(
    'No se calcula: la resistencia de la barra, del brazo de un soporte ni del acero de un tornillo, tableros que ceden bajo una placa, motores, poleas de cordón, ni cuánto cuelgan los extremos más allá de los soportes.',
  ),
  'drapery/assume-ground': one(
    'Si nadie dice otra cosa, montantes y marcos son de la madera más ligera, y las placas de acero dulce de 1/8 in (de memoria). Un montante mide 1 1/2 in de ancho y su eje está donde se dice.',
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
  'drapery/sag-x': one('dónde se comba más'),
  'drapery/largest-sag': one('cuánto se comba como mucho'),
  'drapery/sag-most': one('cuánto se admite que se combe'),
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
