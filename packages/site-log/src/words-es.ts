import type { Said } from '@evenhem/job'
import type { LogCode } from './words.ts'

/** The same in Spanish. */
export const spanishLogWords: Readonly<Record<LogCode, Said>> = {
  'log/no-json': {
    says: 'Línea que no es JSON; se esperaba una anotación',
    help: 'Se omite; el resto del archivo vale. Recupere la línea de una copia, si la hay.',
  },
  'log/no-utf-8': {
    says: 'Bytes que no son UTF-8; se esperaba una anotación',
    help: 'La línea se omite; el resto del archivo vale.',
  },
  'log/odd-json': {
    says: 'Espacios, un nombre repetido o un número con forma rara; se esperaba la línea tal como se escribió',
    help: 'La línea se omite. Las anotaciones no se editan a mano: ponga otro valor sobre el equivocado.',
  },
  'log/no-event': { says: 'Valor inesperado; se esperaba una anotación: un objeto', help: 'La línea se omite.' },
  'log/strange-member': {
    says: 'Miembro inesperado «{name}» de una anotación',
    help: 'La línea se omite. Quizá la escribió una versión más nueva.',
  },
  'log/member-by': {
    says: '«by» inesperado en una anotación; se esperaban minúsculas sin acento, cifras y guiones, hasta 40',
    help: 'La línea se omite.',
  },
  'log/member-n': { says: '«n» inesperado en una anotación; se esperaba un número entero desde 1', help: 'La línea se omite.' },
  'log/member-count': {
    says: '«count» inesperado en una anotación; se esperaba un número entero desde 1',
    help: 'La línea se omite.',
  },
  'log/member-clock': {
    says: '«clock» inesperado en una anotación; se esperaba un momento como 2026-11-30T09:12:00Z',
    help: 'La línea se omite.',
  },
  'log/member-who': {
    says: '«who» inesperado en una anotación; se esperaba un nombre de hasta 200 caracteres',
    help: 'La línea se omite.',
  },
  'log/member-before': {
    says: '«before» inesperado en una anotación; se esperaban 64 cifras hexadecimales',
    help: 'La línea se omite.',
  },
  'log/member-place': {
    says: '«place» inesperado en una anotación; se esperaba un puntero JSON como /rooms/…',
    help: 'La línea se omite.',
  },
  'log/member-value': {
    says: '«value» inesperado en una anotación; se esperaba un valor que no sea null ni anide a más de 16 niveles',
    help: 'La línea se omite.',
  },
  'log/member-over': {
    says: '«over» inesperado en una anotación; se esperaba una lista de anotaciones como "tablet-3:17", cada una una vez',
    help: 'La línea se omite.',
  },
  'log/before': {
    says: 'Comienzo inesperado; se esperaba `before` en todas las líneas menos la primera, y allí no',
    help: 'La línea se omite.',
  },
  'log/long-line': { says: 'Línea demasiado larga; se esperaban {most} caracteres como mucho', help: 'La línea se omite.' },
  'log/other-device': {
    says: 'Anotación de «{by}» en el archivo de «{device}»; se esperaban solo las suyas',
    help: 'La línea se omite; su lugar es {by}.jsonl.',
  },
  'log/twice': { says: 'Línea repetida: la anotación {by}:{n} ya está aquí', help: 'Vale una vez.' },
  'log/clash': {
    says: 'Otro contenido de la anotación {by}:{n}; se esperaba el mismo en todas partes',
    help: 'Alguien cambió un registro, o dos aparatos tienen el mismo nombre. Averigüe qué copia vale; no se cambió nada.',
  },
  'log/gap': { says: 'Anotación número {n} después de la {after}; se esperaba la siguiente', help: 'Faltan líneas; esta vale.' },
  'log/chain': {
    says: 'La línea anterior a la anotación {n} no es aquella tras la que se escribió',
    help: 'Una línea se cambió o se perdió. Esta vale; compárela con una copia del registro.',
  },
  'log/count': {
    says: 'Cuenta {count} de la anotación {n}; se esperaba más de {after}',
    help: 'Vale; solo su orden en las listas puede estar mal.',
  },
  'log/torn': {
    says: 'Final a mitad de una línea ({bytes} bytes); se esperaba una entera',
    help: 'La línea se estaba escribiendo cuando se cortó la corriente; no se confirmó, y la tableta la envía otra vez.',
  },
  'log/strange-file': {
    says: 'Archivo inesperado «{name}» en el registro; se esperaban los de los aparatos, como tablet-1.jsonl',
    help: 'No se lee.',
  },
  'log/big-file': { says: 'Tamaño inesperado de {name}; se esperaban {most} MiB como mucho', help: 'No se lee.' },
}
