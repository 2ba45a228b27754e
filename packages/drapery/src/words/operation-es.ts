import type { Words } from '@evenhem/plugin'
import type { operationWords } from './operation.ts'
import { one } from './sentence.ts'

export const operationWordsEs: Words &
  Readonly<Record<keyof typeof operationWords, { readonly says: string; readonly help?: string }>> = {
  'drapery/cord-once': one('barra y caída'),
  'drapery/cord-twice': one('ida y vuelta'),
  'drapery/cord-drop': one('caída hasta la polea de abajo'),
  'drapery/cord-tie': one('para atar'),
  'drapery/cord-length-new': one('cordón nuevo'),
  'drapery/cord-device': one('El tensor del lazo está fijo y probado.'),
  'drapery/cord-device.unknown': one(
    'Nadie anotó aún que el tensor del lazo esté fijo y probado.',
    'Fíjelo de modo que el lazo quede tenso, compruebe que la cortina solo funciona con él y anótelo. Un lazo no se entrega sin eso.',
  ),
  'drapery/cord-device.fail': one(
    'El tensor del lazo {device, select, missing {falta} other {no está probado}}.',
    'No lo entregue: un lazo suelto puede estrangular a un niño. Consiga el tensor, o que se mueva a mano, con varilla o con motor.',
  ),
  'drapery/cord-length': one(
    '{what, select, free {El cordón suelto mide {value}, {limit} como máximo ({source}).} loop {El lazo suelto mide {value} de contorno, {limit} como máximo ({source}).} lowest {El cordón acaba a {value} del piso, {limit} como mínimo ({source}).} other {Ningún lazo de {limit} o más cuelga a {above} o menos ({source}).}}',
  ),
  'drapery/cord-length.none': one(
    'No se conoce aquí ninguna medida de cordones publicada para {country}; un lazo necesita su tensor.',
  ),
  'drapery/cord-length.country': one(
    'No se conocen aquí límites de cordones para {country}.',
    'Siga la ley local y las instrucciones del fabricante.',
  ),
  'drapery/cord-length.unknown': one(
    '{what, select, lowest {Aún no se sabe a qué altura acaba el cordón; {limit} del piso como mínimo ({source}).} free {Aún no se sabe cuánto mide el cordón suelto; {limit} como máximo ({source}).} low {Aún no se sabe qué lazo forma el cordón; tiene que medir menos de {limit}, o colgar todo por encima de {above} ({source}).} other {Aún no se sabe cuánto mide el lazo suelto; {limit} como máximo ({source}).}}',
    'Mídalo con las cortinas colgadas y anótelo.',
  ),
  'drapery/cord-length.fail': one(
    '{what, select, free {El cordón suelto mide {value}; {limit} como máximo ({source}).} lowest {El cordón acaba a {value} del piso; {limit} como mínimo ({source}).} low {Un lazo de {value} cuelga bajo; tiene que medir menos de {limit}, o colgar todo por encima de {above} ({source}).} other {El lazo suelto mide {value} de contorno; {limit} como máximo ({source}).}}',
    'Acórtelo o sujételo para siempre, o cambie cómo se mueve: acuérdelo con el taller. Así no se entrega.',
  ),
  'drapery/within-reach': one('Lo que se maneja está a {handle} del piso, entre {least} y {most} ({source}).'),
  'drapery/within-reach.fail': one(
    'Lo que se maneja está a {handle} del piso; en un lugar público, de {least} a {most} ({source}).',
    'Una varilla más larga, u otro lugar: acuérdelo con quien lleva el lugar.',
  ),
  'drapery/within-reach.unknown': one(
    '{known, select, no {No se conoce aquí un alcance para {country}.} other {Aún no se sabe a qué altura está lo que se maneja.}}',
    '{known, select, no {Siga las reglas locales de los lugares públicos.} other {Mídalo desde el piso.}}',
  ),
  'drapery/power': one(
    '{how, select, battery {El motor lleva su batería.} wired {El motor lo conecta un electricista autorizado.} other {El cable de {lead} llega al enchufe, a {way} por la pared.}}',
  ),
  'drapery/power.fail': one(
    '{how, select, none {El motor no tiene corriente.} nowhere {En estas paredes no hay enchufe para el cable del motor.} other {El cable de {lead} no llega al enchufe, a {way} por la pared.}}',
    'Que un electricista autorizado lleve corriente, o un motor con batería, antes de taladrar nada. Sin alargadores.',
  ),
  'drapery/power.unknown': one(
    'Aún no se sabe qué alimenta el motor.',
    'Diga qué lo alimenta, cuánto mide su cable y dónde hay enchufes.',
  ),
  'drapery/fix-device': one('Fije el tensor del lazo y pruébelo.'),
  'drapery/fix-device.why': one(
    'Con los tornillos que trae, de modo que el lazo quede tenso. La cortina no debe funcionar, o no del todo, hasta que esté fijo. No corte nunca un lazo en dos.',
  ),
  'drapery/fix-device.done': one('El tensor está fijo y probado'),
  'drapery/record-cord': one('{by, select, loop {Anote el tensor y el lazo.} other {Anote el cordón suelto.}}'),
  'drapery/record-cord.why': one(
    '{by, select, loop {A qué altura está el tensor y cuánto lazo se puede soltar; fotografíe el tensor donde está fijo.} other {Cuánto cuelga al alcance.}} Deje puestas las etiquetas.',
  ),
  'drapery/record-cord.done': one('Los cordones están anotados'),
  'drapery/motor': one(
    '{power, select, battery {Cargue el motor y ajuste sus topes.} wired {Haga conectar el motor y ajuste sus topes.} other {Enchufe el motor y ajuste sus topes.}}',
  ),
  'drapery/motor.why': one('Según el fabricante; aparte el cable de los pliegues y enseñe al cliente cómo pararlo.'),
  'drapery/motor.done': one('El motor funciona'),
  'drapery/caution-cord': one('Un cordón suelto puede estrangular a un niño. No deje lazos ni puntas largas al alcance.'),
  'drapery/caution-electric': one('Lo eléctrico es de personas autorizadas. Siga las normas locales y al fabricante.'),
  'drapery/entry-cords': one(
    'Los cordones pueden estrangular a un niño rápido y en silencio. Aleje de ellos cunas, camas y lo que se pueda trepar{by, select, loop {; no afloje ni quite nunca el tensor y, si se suelta, hágalo fijar enseguida} other {; deje el cordón fuera del alcance}}. Deje puestas las etiquetas de aviso.',
  ),
  'drapery/entry-cords-ca': one(
    'Descuelgue la cortina enseguida si queda al alcance un cordón de más de 22 cm o un lazo de más de 44 cm (SOR/2019-97).',
  ),
  'drapery/entry-safe-corded': one('Aparte los paños de los calefactores. No se cuelgue de la barra.'),
}
