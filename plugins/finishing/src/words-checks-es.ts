import type { Words } from '@evenhem/plugin'
import type { checkWords as english } from './words-checks.ts'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

/** The same codes as in English: one that is missing does not compile. */
export const checkWords: Readonly<Record<keyof typeof english, Words[string]>> = {
  'finishing/fabric-known': one('Se sabe qué decide el vapor: {fibre}, en {cloth}.'),
  'finishing/fabric-known.warn': one(
    'Fibra inesperada «{name}» en {cloth}; se esperaba una cuyo vapor se conozca aquí.',
    '{label, select, yes {La etiqueta admite vapor: el mínimo, por el revés, tras una prueba en un lugar escondido.} other {No se le da vapor. Pregunte al proveedor cómo se le da, o escriba su etiqueta de cuidado en el pedido.}}',
  ),
  'finishing/fabric-known.unknown': one(
    '{how, select, none {El pedido no nombra aquí ninguna tela, así que nadie sabe cómo darle vapor.} other {El pedido no dice de qué está hecha {cloth}.}}',
    'Escriba en el pedido la tela, sus fibras o su etiqueta de cuidado; hasta entonces se trata como delicada.',
  ),
  'finishing/care-label': one(
    'La etiqueta de {cloth} admite vapor: {by, select, only {«solo vapor», sin presión} two {dos puntos} three {tres puntos} other {no dice nada en contra}} ({source}).',
  ),
  'finishing/care-label.not': one(
    'La etiqueta de {cloth} prohíbe el vapor, {by, select, none {«sin vapor»} crossed {con la plancha tachada} other {con un punto}} ({source}), y no se pidió.',
  ),
  'finishing/care-label.fail': one(
    'Se pidió vapor y la etiqueta de {cloth} lo prohíbe, {by, select, none {«sin vapor» de ninguna forma} crossed {con la plancha tachada} other {con un punto, que es sin vapor}} ({source}).',
    'Los pasos siguen la etiqueta: no se da vapor. Aclárelo con el taller y quite el vapor del pedido.',
  ),
  'finishing/care-label.warn': one(
    'La etiqueta de {cloth} dice «solo vapor» junto a una plancha {by, select, crossed {tachada} other {con un punto}}, que es sin vapor ({source}).',
    'Los pasos siguen lo que prohíbe. Pregunte al proveedor cuál vale.',
  ),
  'finishing/care-label.unknown': one(
    'En el pedido no hay etiqueta de cuidado de {cloth}; {steam, select, yes {se le da vapor como es usual para sus fibras} other {no se le da vapor}}.',
    'La norma de etiquetas de Estados Unidos (16 CFR 423) cubre prendas de vestir, no cortinas terminadas, así que puede no haberla: pregunte al proveedor de la tela.',
  ),
  'finishing/pile': one(
    '{cloth} es terciopelo: {steam, select, yes {se le da vapor solo por el revés, nunca por el derecho} other {no se le da vapor}}.',
  ),
  'finishing/pile.warn': one(
    '{how, select, side {{cloth} es terciopelo delante de un revés con recubrimiento: ningún lado admite vapor.} other {{cloth} se llama terciopelo y el pedido no dice si tiene pelo.}}',
    '{how, select, side {No se le da vapor. Aclare con el taller cómo salen las arrugas.} other {Se trata como terciopelo. Diga `pile` en la tela.}} Nunca dé vapor al pelo por el derecho (práctica común, sin fuente).',
  ),
  'finishing/water-spots': one('{cloth} puede mancharse; el vapor no dejó marca en un lugar escondido.'),
  'finishing/water-spots.unknown': one(
    'El agua puede dejar manchas en {cloth}, y nadie ha anotado todavía una prueba.',
    'Pruebe el vapor en el interior de un dobladillo o de un retorno, deje secar y anote qué dejó.',
  ),
  'finishing/water-spots.warn': one(
    'El vapor dejó marca en {cloth} donde se probó.',
    'Ya no se le da vapor. Alísela a mano y avise al taller.',
  ),
  'finishing/tie-hours': one('Los pliegues quedan atados {hours} horas; lo usual son de {least} a {most}.'),
  'finishing/tie-hours.warn': one(
    'Se esperaban de {least} a {most} horas de pliegues atados, no {hours, plural, one {# hora} other {# horas}}.',
    'Con menos se vuelven a abrir; con más, las tiras dejan marcas (práctica común, sin fuente). Cámbielo si no es lo que se quiere.',
  ),
  'finishing/untie-day': one('Las tiras se quitan el {date}.'),
  'finishing/untie-day.warn': one(
    'Los pliegues quedan atados {hours} horas, y no hay día fijado para quitar las tiras.',
    '{date, select, none {Anote el día en que se colgó, o fije usted el día.} other {Contado desde el día en que se colgó, es el {date}.}}',
  ),
  'finishing/way-untie': one('Quitar las tiras el {date}, {hours} horas después de colgarla.'),
  'finishing/content': one('El instalador y el cliente están conformes.'),
  'finishing/content.unknown': one(
    'Nadie ha anotado todavía que el instalador y el cliente estén conformes.',
    'Véanla juntos desde lejos y anote quién lo está.',
  ),
  'finishing/content.warn': one(
    '{who, select, installer {El instalador está conforme; el cliente, no.} customer {El cliente está conforme; el instalador, no.} other {Ni el instalador ni el cliente están conformes.}}',
    'Escriba qué no está bien, quién lo arregla y para cuándo.',
  ),
  'finishing/source-symbols': one('tablas de símbolos de cuidado según ISO 3758'),
  'finishing/source-terms': one('16 CFR 423, norma de etiquetas de cuidado de Estados Unidos'),
  'finishing/source-practice': one('práctica común, sin fuente'),
  'finishing/source-none': one('sin etiqueta'),
  'finishing/source-plates': one(
    'la más fría de las planchas que aguantan sus telas, en °C',
    'Puntos de la etiqueta: tablas según ISO 3758, que no se leyó. Sin etiqueta, por fibra: The Spruce, «Select the correct ironing temperature for fabrics», y TextileTuts, «Iron temperature guide»; de dos cifras, la menor. La etiqueta manda sobre las fibras (práctica común, sin fuente).',
  ),
  'finishing/plate-limit': one('plancha más caliente, en °C'),
  'finishing/plate-200': one('tres puntos, en °C'),
  'finishing/plate-150': one('dos puntos, en °C'),
  'finishing/plate-110': one('un punto, en °C'),
  'finishing/plate-linen': one('lino, en °C'),
  'finishing/plate-cotton': one('algodón, en °C'),
  'finishing/plate-viscose': one('viscosa, en °C'),
  'finishing/plate-wool': one('lana, en °C'),
  'finishing/plate-silk': one('seda, en °C'),
  'finishing/plate-polyester': one('poliéster, en °C'),
  'finishing/plate-acetate': one('acetato, en °C'),
  'finishing/plate-triacetate': one('triacetato, en °C'),
  'finishing/plate-nylon': one('nailon, en °C'),
  'finishing/plate-acrylic': one('acrílico, en °C'),
  'finishing/plate-elastane': one('elastano, en °C'),
  'finishing/fibre-linen': one('lino'),
  'finishing/fibre-cotton': one('algodón'),
  'finishing/fibre-viscose': one('viscosa'),
  'finishing/fibre-wool': one('lana'),
  'finishing/fibre-silk': one('seda'),
  'finishing/fibre-polyester': one('poliéster'),
  'finishing/fibre-acetate': one('acetato'),
  'finishing/fibre-triacetate': one('triacetato'),
  'finishing/fibre-nylon': one('nailon'),
  'finishing/fibre-acrylic': one('acrílico'),
  'finishing/fibre-elastane': one('elastano'),
  'finishing/fibre-unknown': one('una fibra que no se conoce'),
  'finishing/heading-over-rod': one('cabecilla sobre la parte superior de la barra'),
  'finishing/top-of-drapery': one('parte superior de la cortina'),
  'finishing/top-of-rod': one('parte superior de la barra'),
}
