import type { logEnglish } from './words-log.ts'

/** The same in Spanish. */
export const logSpanish: Readonly<Record<keyof typeof logEnglish, string>> = {
  log: 'Muestra lo hallado en la obra: quién anotó qué, dónde y cuándo.',
  'log.more':
    'Una línea por anotación, en el orden en que se siguieron: el reloj del aparato, quién lo llevaba, el lugar, el valor de antes y el nuevo. Código de salida 1: hay valores que se contradicen, un valor se omite o un archivo del registro no es como debe ser.',
  merge: 'Añade al registro y a las fotos de un trabajo lo que tiene otra copia de su carpeta.',
  'merge.more':
    'La segunda carpeta no se cambia. Lo que tienen ambas se guarda una vez, y volver a unirlas no hace daño. Código de salida 1: los dos registros dicen cosas distintas de una misma anotación, y entonces no se cambió nada; o se omitió una foto.',
  'log-empty': 'Todavía no hay nada anotado en {folder}.',
  'log-yes': 'marcado',
  'log-no': 'sin marcar',
  'log-ordered': 'pedido {value}',
  'log-signed':
    '{role, select, customer {cliente} other {instalador}} {name}{accepts, select, with {, aceptado con puntos pendientes} without {, aceptado sin puntos pendientes} other {}}{isLeft, select, yes {, se dejó: {left}} other {}}',
  'log-withdrawn': 'retirado',
  'log-in-conflict': 'contradice a otro valor; ponga uno sobre ambos',
  'log-left-out': 'omitido, {at}: {why}',
  'log-odd-lines': 'Archivos del registro',
  'merge-added': '{device}: {count, plural, one {# anotación} other {# anotaciones}} de {from}',
  'merge-photos': '{count, plural, one {# foto} other {# fotos}} de {from}',
  'merge-left-out': 'omitida, {file}: {why}',
  'merge-nothing': 'Nada nuevo en {from}; todo lo que tiene está aquí.',
  'merge-no-folder':
    'Archivo de trabajo inesperado {file}; se esperaba una carpeta con job.json, donde cabe un registro; nombre su carpeta',
  'merge-same': 'Carpeta {folder} dos veces; se esperaban dos copias de un trabajo; nombre la otra',
  'merge-other-job':
    'Número de trabajo inesperado {number} en {folder}; se esperaba {expected}, como en la primera carpeta; no se cambió nada, nombre una copia del mismo trabajo',
  'merge-photos-failed':
    'Respuesta inesperada del disco ({error}) en {folder}; se esperaba sitio para las fotos; el registro ya está unido, haga sitio o repare el disco y vuelva a unir, que no hace daño',
  'merge-failed':
    'Respuesta inesperada del disco ({error}) en {folder}; se esperaba sitio para el registro; haga sitio o repare el disco y vuelva a unir, que no hace daño',
}
