import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'
import type { transferWords } from './transfer.ts'

export const transferWordsEs: Words &
  Readonly<Record<keyof typeof transferWords, { readonly says: string; readonly help?: string }>> = {
  'drapery/plate-lower': one('esta placa queda más abajo por'),
  'drapery/first-hole': one('agujero superior del primer soporte'),
  'drapery/first-ceiling': one('del piso al techo en el primer soporte'),
  'drapery/first-head': one('del piso a lo alto del marco en el primer soporte'),
  'drapery/floor-to-hole': one('del piso al agujero superior'),
  'drapery/floor-to-head': one('del piso a lo alto del marco'),
  'drapery/floor-to-ceiling': one('del piso al techo'),
  'drapery/floor-to-level': one('del piso a la línea de nivel'),
  'drapery/level-from-floor': one('línea de nivel según los puntos del piso'),
  'drapery/head': one('alto del marco'),
  'drapery/mark': one('marca'),
  'drapery/mark-ceiling': one('marca con el techo'),
  'drapery/mark-head': one('marca con el marco'),
  'drapery/mark-level': one('marca a nivel'),
  'drapery/mark-floor': one('marca con el piso'),
  'drapery/mark-between': one('marca intermedia'),
  'drapery/mark-planned': one('marca según el plan'),
  'drapery/to-ceiling': one('del agujero al techo'),
  'drapery/to-head': one('del agujero a lo alto del marco'),
  'drapery/eye-reach': one('la vista compara hasta'),
  'drapery/halfway': one(
    'a medio camino entre la marca más baja y la más alta, pues ninguna línea está bastante cerca de la barra',
  ),
  'drapery/by-nearness': one('el punto medio de las marcas, cada una según cuánto más cerca que eso está su línea'),
  'drapery/gap-ceiling': one('distancia al techo respecto al primer soporte'),
  'drapery/gap-head': one('distancia al marco respecto al primer soporte'),
  'drapery/gap-hem': one('dobladillo sobre el piso respecto al primer soporte'),
  'drapery/gap-rod': one('barra fuera de nivel'),
  'drapery/rise-ceiling': one('cómo corre el techo'),
  'drapery/rise-head': one('cómo corre lo alto del marco'),
  'drapery/rise-floor': one('cómo corre el piso'),
  'drapery/bracket-x': one('soporte a lo largo de la pared'),
  'drapery/straight-along-rod': one('en línea recta de soporte a soporte'),
  'drapery/most-out-of-level': one('fuera de nivel como máximo'),
  'drapery/in-six-feet': one('esto por cada 6 ft (1.83 m)'),
  'drapery/rod-level-most': one('por cada 6 ft como máximo'),
  'drapery/moved': one('subido por'),
  'drapery/planned-hole': one('agujero según el plan'),
  'drapery/hole-read': one('agujero según la lectura'),
  'drapery/fixed-off': one('lejos de la marca'),
  'drapery/in-line': one('en línea con los soportes de los extremos'),
  'drapery/out-of-line': one('fuera de línea'),
  'drapery/ceiling-falls': one('el techo baja'),
  'drapery/ceiling-rises': one('el techo sube'),
  'drapery/head-falls': one('el marco baja'),
  'drapery/head-rises': one('el marco sube'),
  'drapery/floor-falls': one('el piso baja'),
  'drapery/floor-rises': one('el piso sube'),
  'drapery/rod-falls': one('la barra baja'),
  'drapery/rod-rises': one('la barra sube'),
  'drapery/level-steep': one('Las alturas se dibujan 12 veces más empinadas que los anchos.'),
  'drapery/level-dotted': one('Punteado: nivel real desde el primer soporte.'),
  'drapery/line-ceiling': one('techo'),
  'drapery/line-head': one('alto del marco'),
  'drapery/line-level': one('nivel real'),
  'drapery/line-floor': one('piso'),
  'drapery/line-between': one('punto medio'),
  'drapery/marks-agree': one('En el {bracket} las marcas coinciden hasta {near}: difieren {apart}.'),
  'drapery/marks-agree.followed': one('En el {bracket} la barra sigue: {follows}. Marca {mark}.'),
  'drapery/marks-agree.unread': one(
    'Aún no se sabe qué marca lleva el {bracket}: hay que leer una línea ahí y en el primer soporte.',
    'Lea del piso a lo alto del marco y del piso al techo en los dos soportes, y del piso a la línea de nivel en este.',
  ),
  'drapery/marks-agree.unknown': one(
    'En el {bracket} las marcas difieren {apart}, permitido {near}: piso {floor}{ceilingIs, select, known {, techo {ceiling}} other {}}{headIs, select, known {, alto del marco {head}} other {}}{levelIs, select, known {, nivel {level}} other {}}. {agree, select, some {{count} de ellas coinciden; de esas, {best} es la que menos se nota: {mark}.} other {No coinciden dos; el mejor término medio es {mark}.}} El menor error mayor: {least}, con {leastOf}.',
    'Elija qué sigue la barra, con el cliente si se va a notar. Antes no se perfora ahí.',
  ),
  'drapery/rod-level': one(
    'La barra está {way, select, same {a nivel} other {{out} fuera de nivel en {apart}; hasta {most} está bien}}.',
  ),
  'drapery/rod-level.warn': one(
    'La barra queda {out} más {way, select, more {alta} other {baja}} en el extremo derecho, en {apart}; con más de {most} las anillas se corren y los motores fallan.',
    'Elija una marca más cercana al nivel o dígale al cliente lo que causa.',
  ),
  'drapery/rod-level.unknown': one(
    'Aún no se sabe cuánto está la barra fuera de nivel.',
    'Lleve una línea de nivel desde el primer agujero y lea del piso a la línea en el otro soporte.',
  ),
  'drapery/fixed-mark': one('El {bracket} quedó fijo en su marca: {read}, según el plan {planned}.'),
  'drapery/fixed-mark.warn': one(
    'El {bracket} quedó fijo {off} demasiado {way, select, high {alto} other {bajo}}: {read}, según el plan {planned}. Ahí el dobladillo cuelga eso mismo más {way, select, high {alto} other {bajo}}; los ganchos lo compensan.',
    'Deje el soporte: reajuste los ganchos de ese lado cuando lea el dobladillo.',
  ),
  'drapery/fixed-mark.fail': one(
    'El {bracket} quedó fijo {off} demasiado {way, select, high {alto} other {bajo}}: {read}, según el plan {planned}. Ahí el dobladillo cuelga eso mismo más {way, select, high {alto} other {bajo}}, más de lo que compensan los ganchos.',
    'Mida otra vez. Si es así, lleve el soporte a un agujero nuevo o llame al taller por el paño.',
  ),
  'drapery/fixed-mark.unknown': one(
    'El {bracket} está fijo y nadie anotó a qué altura está su agujero.',
    'Mida desde el piso debajo de él hasta su agujero superior.',
  ),
  'drapery/hung-hem': one(
    'Como están los soportes, la holgura del dobladillo es de {left} en el soporte izquierdo y de {right} en el derecho; pedida {clearance}.',
  ),
  'drapery/hung-hem.warn': one(
    'Como están los soportes, la holgura del dobladillo es de {left} en el soporte izquierdo y de {right} en el derecho; pedida {clearance}. A la {side, select, left {izquierda} other {derecha}} es {off} {way, select, more {mayor} other {menor}}; {pins, select, yes {los ganchos pueden compensarlo} other {es más de lo que compensan los ganchos}}.',
    'Lea el dobladillo ya colgado y corríjalo con los ganchos.',
  ),
  'drapery/hung-hem.fail': one(
    'Como están los soportes, el dobladillo arrastra: su holgura es de {left} en el soporte izquierdo y de {right} en el derecho; pedida {clearance}.',
    '{pins, select, yes {Hunda los ganchos {off} antes de colgar.} other {No la cuelgue: suba un soporte que aún no esté fijo o llame al taller.}}',
  ),
  'drapery/support-in-line': one(
    'El {bracket} está en línea con los soportes de los extremos: {way, select, same {exacto} other {difiere {off}, permitido {near}}}.',
  ),
  'drapery/support-in-line.fail': one(
    'El {bracket} queda {off} demasiado {way, select, more {alto} other {bajo}} para la línea entre los soportes de los extremos; permitido {near}. Dobla la barra.',
    'Póngalo en la línea de un hilo entre los soportes de los extremos.',
  ),
  'drapery/follow-ceiling': one(
    'Seguir el techo: marca {mark} en el {bracket}. {ceilingIs, select, same {Igual distancia al techo. } more {Distancia al techo {ceilingBy} mayor. } less {Distancia al techo {ceilingBy} menor. } other {}}{headIs, select, same {Igual distancia al marco. } more {Distancia al marco {headBy} mayor. } less {Distancia al marco {headBy} menor. } other {}}{hemIs, select, same {Dobladillo parejo sobre el piso.} more {Dobladillo {hemBy} más alto sobre el piso; {pins, select, yes {los ganchos pueden compensarlo} other {más de lo que compensan los ganchos}}.} other {Dobladillo {hemBy} más bajo sobre el piso; {pins, select, yes {los ganchos pueden compensarlo} other {más de lo que compensan los ganchos}}.}}{rodIs, select, same { Barra a nivel.} more { Barra {rodBy} más alta aquí.} less { Barra {rodBy} más baja aquí.} other {}} Lo mayor que se ve: {largest}.',
  ),
  'drapery/follow-head': one(
    'Seguir lo alto del marco: marca {mark} en el {bracket}. {ceilingIs, select, same {Igual distancia al techo. } more {Distancia al techo {ceilingBy} mayor. } less {Distancia al techo {ceilingBy} menor. } other {}}{headIs, select, same {Igual distancia al marco. } more {Distancia al marco {headBy} mayor. } less {Distancia al marco {headBy} menor. } other {}}{hemIs, select, same {Dobladillo parejo sobre el piso.} more {Dobladillo {hemBy} más alto sobre el piso; {pins, select, yes {los ganchos pueden compensarlo} other {más de lo que compensan los ganchos}}.} other {Dobladillo {hemBy} más bajo sobre el piso; {pins, select, yes {los ganchos pueden compensarlo} other {más de lo que compensan los ganchos}}.}}{rodIs, select, same { Barra a nivel.} more { Barra {rodBy} más alta aquí.} less { Barra {rodBy} más baja aquí.} other {}} Lo mayor que se ve: {largest}.',
  ),
  'drapery/follow-level': one(
    'Nivel real: marca {mark} en el {bracket}. {ceilingIs, select, same {Igual distancia al techo. } more {Distancia al techo {ceilingBy} mayor. } less {Distancia al techo {ceilingBy} menor. } other {}}{headIs, select, same {Igual distancia al marco. } more {Distancia al marco {headBy} mayor. } less {Distancia al marco {headBy} menor. } other {}}{hemIs, select, same {Dobladillo parejo sobre el piso.} more {Dobladillo {hemBy} más alto sobre el piso; {pins, select, yes {los ganchos pueden compensarlo} other {más de lo que compensan los ganchos}}.} other {Dobladillo {hemBy} más bajo sobre el piso; {pins, select, yes {los ganchos pueden compensarlo} other {más de lo que compensan los ganchos}}.}}{rodIs, select, same { Barra a nivel.} more { Barra {rodBy} más alta aquí.} less { Barra {rodBy} más baja aquí.} other {}} Lo mayor que se ve: {largest}.',
  ),
  'drapery/follow-floor': one(
    'Seguir el piso: marca {mark} en el {bracket}. {ceilingIs, select, same {Igual distancia al techo. } more {Distancia al techo {ceilingBy} mayor. } less {Distancia al techo {ceilingBy} menor. } other {}}{headIs, select, same {Igual distancia al marco. } more {Distancia al marco {headBy} mayor. } less {Distancia al marco {headBy} menor. } other {}}{hemIs, select, same {Dobladillo parejo sobre el piso.} more {Dobladillo {hemBy} más alto sobre el piso; {pins, select, yes {los ganchos pueden compensarlo} other {más de lo que compensan los ganchos}}.} other {Dobladillo {hemBy} más bajo sobre el piso; {pins, select, yes {los ganchos pueden compensarlo} other {más de lo que compensan los ganchos}}.}}{rodIs, select, same { Barra a nivel.} more { Barra {rodBy} más alta aquí.} less { Barra {rodBy} más baja aquí.} other {}} Lo mayor que se ve: {largest}.',
  ),
  'drapery/follow-between': one(
    'En el punto medio: marca {mark} en el {bracket}, {why, select, near {las marcas de las líneas a menos de {reach} de la barra, las más cercanas pesan más} other {a medio camino entre la marca más baja y la más alta, pues ninguna línea está a menos de {reach} de la barra}}. {ceilingIs, select, same {Igual distancia al techo. } more {Distancia al techo {ceilingBy} mayor. } less {Distancia al techo {ceilingBy} menor. } other {}}{headIs, select, same {Igual distancia al marco. } more {Distancia al marco {headBy} mayor. } less {Distancia al marco {headBy} menor. } other {}}{hemIs, select, same {Dobladillo parejo sobre el piso.} more {Dobladillo {hemBy} más alto sobre el piso; {pins, select, yes {los ganchos pueden compensarlo} other {más de lo que compensan los ganchos}}.} other {Dobladillo {hemBy} más bajo sobre el piso; {pins, select, yes {los ganchos pueden compensarlo} other {más de lo que compensan los ganchos}}.}}{rodIs, select, same { Barra a nivel.} more { Barra {rodBy} más alta aquí.} less { Barra {rodBy} más baja aquí.} other {}} Lo mayor que se ve: {largest}.',
  ),
  'drapery/hung-hem.unknown': one('Aún no se sabe qué hacen los soportes al dobladillo.'),
  'drapery/support-in-line.unknown': one('Aún no se sabe si los apoyos están en línea.'),
}
