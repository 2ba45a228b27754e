import type { Words } from '@evenhem/plugin'
import type { stepWords as english } from './words-steps.ts'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

const reason =
  '{by, select, none {La etiqueta de {cloth} dice sin vapor, de ninguna forma ({source}).} crossed {En la etiqueta de {cloth} la plancha está tachada: no planchar y, según algunas tablas, tampoco dar vapor ({source}).} one {La etiqueta de {cloth} muestra un punto: plancha a 110 °C como máximo y sin vapor ({source}).} marked {El vapor dejó marca en el lugar escondido.} side {El revés tiene recubrimiento y el derecho no admite vapor: no queda ningún lado.} unknown {Nadie dice qué aguanta {cloth}: no se conocen todas sus fibras y aquí no hay etiqueta de cuidado.} ordered {Así lo dice el pedido.} unnamed {El pedido no nombra su tela, así que nadie sabe qué aguanta.} other {}}'
const manner =
  '{level, select, generous {Admite vapor abundante, usado con mesura.} moderate {Vapor moderado.} light {Ligeramente.} low {Poco vapor.} other {El mínimo vapor que haga falta.}}{off, select, yes { Mantenga el cabezal separado de la tela.} other {}}{still, select, yes { No jale ni apriete mientras esté tibia y húmeda.} other {}}'
const relaxer =
  '{relaxer, select, allowed {Se permite un quitaarrugas a base de alcohol; pruébelo también en el lugar escondido y ventile el cuarto.} other {Sin quitaarrugas: {relaxer, select, not {esta tela no lo admite.} other {nadie dice que esta tela lo admita.}}}}'

/** The same codes as in English: one that is missing does not compile. */
export const stepWords: Readonly<Record<keyof typeof english, Words[string]>> = {
  'finishing/let-down': one('Quite todas las cintas y ataduras del empaque y deje caer los pliegues hasta el dobladillo.'),
  'finishing/let-down.why': one('Los pliegues que siguen sujetos cuelgan cortos, y el dobladillo se mediría mal.'),
  'finishing/let-down.done': one('Los pliegues caen libres'),
  'finishing/try-steam': one(
    'Lávese las manos. Pruebe el vapor {from, select, back {por el revés, } face {por el derecho, } other {}}en el interior de un dobladillo o de un retorno.',
  ),
  'finishing/try-steam.why': one(
    `Primero en un lugar escondido: espere a que seque y busque marcas, brillos y fruncidos. ${relaxer} Práctica común, sin fuente.`,
  ),
  'finishing/try-steam.done': one('Probado y revisado en seco'),
  'finishing/steam': one(
    '{from, select, back {Dé vapor por el revés, del dobladillo hacia arriba, y luego a lo largo de los dobladillos laterales donde cedan los fruncidos.} face {Dé vapor por el derecho, del dobladillo hacia arriba, y luego a lo largo de los dobladillos laterales donde cedan los fruncidos; no toque el recubrimiento de atrás.} other {Dé vapor del dobladillo hacia arriba, y luego a lo largo de los dobladillos laterales donde cedan los fruncidos.}}',
  ),
  'finishing/steam.why': one(
    `El vapor sube y adelanta la mitad del trabajo más arriba. ${manner} Lo más delicado aquí es {fibre}, en {cloth}; lo decide {by, select, fibre {lo usual para la fibra} other {la etiqueta de cuidado}} ({source}). Deje secar antes de medir el dobladillo: la tela húmeda cuelga más larga o más corta.`,
  ),
  'finishing/steam.done': one('Con vapor dado y seca'),
  'finishing/no-steam': one('No dé vapor. Deje que las arrugas se caigan solas y alise los pliegues a mano.'),
  'finishing/no-steam.why': one(
    `${reason} En su lugar: lávese las manos, pase la mano por cada pliegue desde la cabecilla hacia abajo, ate los pliegues y vuelva a mirar cuando la tela haya colgado. ${relaxer}`,
  ),
  'finishing/no-steam.done': one('Alisada a mano'),
  'finishing/break-buckram': one(
    '{at, select, front {Quiebre la entretela en medio de cada espacio y jálela hacia adelante.} under {Quiebre la entretela en medio de cada espacio para que doble hacia atrás.} other {Quiebre la entretela en medio de cada espacio, hacia donde van los pliegues.}}',
  ),
  'finishing/break-buckram.why': one(
    '{at, select, front {La cabecilla llega hasta arriba de la barra y queda delante de ella: hay lugar hacia adelante.} under {La cabecilla cuelga por debajo de la parte superior de la barra: dobla hacia la pared.} other {Cabecilla delante de la barra: hacia adelante. Cabecilla debajo: hacia atrás.}} Dóblela una vez en toda su altura, con los dedos y no con una herramienta.',
  ),
  'finishing/break-buckram.done': one('Entretela quebrada entre todos los pliegues'),
  'finishing/train': one(
    '{pile, select, yes {Recoja los paños y acomode cada pliegue con la palma, de la cabecilla al dobladillo y a favor del pelo.} other {Recoja los paños y pase cada pliegue entre las manos limpias, de la cabecilla al dobladillo.}}',
  ),
  'finishing/train.why': one(
    'Cada pliegue baja derecho desde la cabecilla; los que se desvían en el dobladillo se empiezan de nuevo arriba.',
  ),
  'finishing/train.done': one('Los pliegues bajan derechos hasta el dobladillo'),
  'finishing/tie': one(
    '{pile, select, yes {Ate los pliegues recogidos con tiras anchas y suaves, arriba, en medio y sobre el dobladillo; flojas, para no aplastar el pelo.} other {Ate los pliegues recogidos con tiras suaves, arriba, en medio y sobre el dobladillo; ajustadas, sin apretar.}}',
  ),
  'finishing/tie.why': one(
    'Durante {hours} horas, para que la tela guarde los pliegues. Lo usual son de 24 a 72 (práctica común, sin fuente). Muestre al cliente cómo corre antes de atar, o cuando ya no haya tiras.',
  ),
  'finishing/tie.done': one('Pliegues atados'),
  'finishing/untie': one(
    '{date, select, none {Fije el día en que se quitan las tiras y quién las quita.} other {Quite las tiras el {date}, o que las quite el cliente.}}',
  ),
  'finishing/untie.why': one(
    'Después de {hours} horas. Si lo hace el cliente: desate del dobladillo hacia arriba, no corte nada cerca de la tela y no corra la cortina antes.',
  ),
  'finishing/untie.done': one('{date, select, none {Día fijado} other {Tiras quitadas}}'),
  'finishing/read-again': one(
    '{date, select, none {Fije un día para volver a medir el dobladillo.} other {Vuelva el {date} y mida otra vez el dobladillo.}}',
  ),
  'finishing/read-again.why': one('Esta tela se asienta mientras cuelga. Entonces el dobladillo se ajusta como el primer día.'),
  'finishing/read-again.done': one('Día fijado'),
  'finishing/stand-back': one('Aléjese un poco junto con el cliente: ¿están los dos conformes con cómo cuelga?'),
  'finishing/stand-back.why': one(
    'Pliegues, dobladillo, altura y lo que muestra la luz. Anote quién lo está; lo que no queda bien se escribe ahora, no después por teléfono.',
  ),
  'finishing/stand-back.done': one('Se preguntó a los dos'),
  'finishing/caution-burn': one(
    'El vapor quema: aléjelo de las manos, la cara y los niños, también mientras calienta; nunca hacia una mano detrás de la tela; vacíelo antes de llevarlo. Siga las instrucciones del fabricante.',
    'En 2024 se retiraron unos dos millones de vaporizadores de mano tras 122 avisos de agua caliente que salía a chorro y 23 quemaduras (US Consumer Product Safety Commission, según la prensa). Qué hacer contra eso es práctica común, sin fuente.',
  ),
  'finishing/caution-hot-head': one('Nunca apoye el cabezal caliente sobre la tela ni contra la pared.'),
  'finishing/caution-wet-floor': one('Seque las gotas: el piso mojado resbala.'),
  'finishing/caution-cord': one(
    'Lleve el cable por donde nadie tropiece, lejos de la escalera; tomacorriente con tierra y manos secas. El trabajo eléctrico corresponde a personas con licencia.',
  ),
  'finishing/caution-pile': one(
    'El pelo se aplasta para siempre: nunca le dé vapor ni presión por el derecho, y tóquelo solo a favor del pelo.',
  ),
  'finishing/caution-spots': one(
    'Aquí el agua deja manchas: deje que el vaporizador escupa lejos de la tela y sosténgalo separado.',
  ),
  'finishing/steamer': one('vaporizador'),
  'finishing/white-cloth': one('paño blanco limpio'),
  'finishing/ties': one('tiras suaves'),
  'finishing/entry-steam': one(
    '{name}: {steam, select, yes {dele vapor {level, select, generous {el que necesite} moderate {moderado} light {ligero} low {en poca cantidad} other {en la mínima cantidad}}{from, select, back {, por el revés} face {, por el derecho y nunca sobre el recubrimiento} other {}}{off, select, yes {, sin tocar la tela} other {}}; pruebe primero en un lugar escondido.} other {no le dé vapor.}}',
  ),
  'finishing/entry-iron': one(
    '{name}, plancha en la etiqueta: {says, select, three {tres puntos, 200 °C como máximo} two {dos puntos, 150 °C como máximo} one {un punto, 110 °C como máximo y sin vapor} other {tachada, no planchar}}.',
  ),
  'finishing/entry-cleaning': one(
    '{name}, limpieza profesional: {dry, select, P {círculo P, limpieza en seco con percloroetileno o hidrocarburos} F {círculo F, limpieza en seco con hidrocarburos} crossed {no limpiar en seco} other {no se dice si en seco}}; {wet, select, W {círculo W, limpieza en húmedo} crossed {no limpiar en húmedo} other {no se dice si en húmedo}}.{mildness, select, mild { Proceso suave.} very { Proceso muy suave.} other {}}',
  ),
  'finishing/entry-no-label': one(
    '{name}: no se conoce su etiqueta de cuidado. Pregunte al taller antes de lavar, dar vapor o limpiar.',
  ),
}
