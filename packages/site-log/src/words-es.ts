import type { Said } from '@evenhem/job'
import type { LogCode } from './words.ts'

/** The same in Spanish. */
export const spanishLogWords: Readonly<Record<LogCode, Said>> = {
  'log/no-json': {
    says: 'Línea que no es JSON; se esperaba un registro',
    help: 'Se omite; el resto del archivo vale. Recupera la línea de una copia, si la hay.',
  },
  'log/no-utf-8': {
    says: 'Bytes que no son UTF-8; se esperaba un registro',
    help: 'La línea se omite; el resto del archivo vale.',
  },
  'log/odd-json': {
    says: 'Espacios, un nombre repetido o un número con forma rara; se esperaba la línea tal como se escribió',
    help: 'La línea se omite. Los registros no se editan a mano: pon otro valor sobre el equivocado.',
  },
  'log/no-event': { says: 'Valor inesperado; se esperaba un registro: un objeto', help: 'La línea se omite.' },
  'log/strange-member': {
    says: 'Miembro inesperado «{name}» de un registro',
    help: 'La línea se omite. Quizá la escribió una versión más nueva.',
  },
  'log/member': { says: '«{name}» inesperado en un registro; se esperaba {expected}', help: 'La línea se omite.' },
  'log/before': {
    says: 'Comienzo inesperado; se esperaba `before` en todas las líneas menos la primera, y allí no',
    help: 'La línea se omite.',
  },
  'log/long-line': { says: 'Línea demasiado larga; se esperaban {most} caracteres como mucho', help: 'La línea se omite.' },
  'log/other-device': {
    says: 'Registro de «{by}» en el archivo de «{device}»; se esperaban solo los suyos',
    help: 'La línea se omite; su lugar es {by}.jsonl.',
  },
  'log/twice': { says: 'Línea repetida: el registro {by}:{n} ya está aquí', help: 'Vale una vez.' },
  'log/clash': {
    says: 'Otro contenido del registro {by}:{n}; se esperaba el mismo en todas partes',
    help: 'Alguien cambió un registro, o dos aparatos tienen el mismo nombre. Averigua qué copia vale; no se cambió nada.',
  },
  'log/gap': { says: 'Registro número {n} después del {after}; se esperaba el siguiente', help: 'Faltan líneas; esta vale.' },
  'log/chain': {
    says: 'La línea anterior al registro {n} no es aquella tras la que se escribió',
    help: 'Una línea se cambió o se perdió. Esta vale; compara con una copia del registro.',
  },
  'log/count': {
    says: 'Cuenta {count} del registro {n}; se esperaba más de {after}',
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
