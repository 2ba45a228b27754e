import type { LengthCode } from './words.ts'

/** The sentences of `lengthWords` in Spanish. */
export const spanishLengthWords: Readonly<Record<LengthCode, { readonly says: string; readonly help?: string }>> = {
  'length/empty': { says: 'Texto vacío inesperado, se esperaba un número; escríbalo como {example}.' },
  'length/too-long': { says: '{count} caracteres inesperados, se esperaban {most} como máximo; escriba solo el número.' },
  'length/not-finite': { says: '{got} inesperado, se esperaba un número finito; escríbalo como {example}.' },
  'length/number-expected': { says: '{got} inesperado, se esperaba un número; escríbalo como {example}.' },
  'length/unfinished': { says: 'Final inesperado después de {before}, se esperaba un número; escriba lo que falta.' },
  'length/other-digits': {
    says: '{got} inesperado, se esperaban las cifras del 0 al 9; escríbalo con ellas.',
    help: 'Las cifras de otras escrituras, y las elevadas o rebajadas, se confunden fácilmente unas con otras.',
  },
  'length/character': { says: '{got} inesperado, se esperaban solo un número y su unidad; quítelo.' },
  'length/exponent': { says: '{got} inesperado, se esperaban cifras sencillas; escriba el número completo.' },
  'length/comma': {
    says: 'Coma inesperada en {got}, se esperaba un punto antes de los decimales y ningún otro signo; escriba {meant}.',
  },
  'length/comma-either': {
    says: 'Coma inesperada en {got}, se esperaba un punto antes de los decimales y ningún otro signo; escriba {point} o {plain}, lo que corresponda.',
    help: 'Unos países escriben una coma antes de los decimales, otros entre los millares, así que no se adivina.',
  },
  'length/point': {
    says: 'Punto inesperado en {got}, se esperaba una cifra después; escriba los decimales o quite el punto.',
  },
  'length/second-point': { says: 'Segundo punto inesperado en {got}, se esperaba uno solo; escriba un solo número.' },
  'length/two-numbers': {
    says: '{got} inesperado después de {before}, se esperaba una fracción, una unidad o nada; escriba un solo número, como {example}.',
    help: 'Las cifras no se separan en grupos, y los pies necesitan su signo: 7 ft 2.',
  },
  'length/left-over': { says: '{got} inesperado después de {before}, no se esperaba nada más; quítelo.' },
  'length/range': { says: '{got} inesperado después de {before}, se esperaba un solo número; escriba el que vale.' },
  'length/minus-inside': {
    says: '{got} inesperado después de {before}, se esperaba un espacio o un guion sin espacios; escriba {meant} si no hay nada que restar.',
    help: 'El signo menos va solo al principio, y entonces vale para todo: −7 ft 2 in son 86 pulgadas bajo cero.',
  },
  'length/second-sign': {
    says: 'Segundo signo inesperado {got}, se esperaba uno al principio; deje uno solo.',
    help: 'Un signo al principio vale para todo: −7 ft 2 in son 86 pulgadas bajo cero.',
  },
  'length/fraction-unfinished': {
    says: 'Fracción inesperada {got}, se esperaban cifras enteras arriba y abajo; escríbala como 1/2.',
  },
  'length/second-slash': {
    says: 'Segunda barra inesperada después de {before}, se esperaba una sola; escriba una sola fracción.',
  },
  'length/zero-denominator': {
    says: '0 inesperado debajo de la barra en {got}, se esperaba 1 o más; escriba la fracción que se leyó.',
  },
  'length/denominator': {
    says: '{got} inesperado debajo de la barra, se esperaba {most} como máximo; escriba decimales en su lugar.',
  },
  'length/decimal-in-fraction': {
    says: 'Punto inesperado en la fracción {got}, se esperaban cifras enteras arriba y abajo; escriba decimales o una fracción.',
  },
  'length/decimal-and-fraction': {
    says: 'Fracción inesperada {got} después de {before}, se esperaban decimales o una fracción, no ambos; escriba una de las dos cosas.',
  },
  'length/improper-fraction': {
    says: '{got} inesperado, se esperaba una fracción menor que uno; escriba {meant} si eso es lo que quiso decir.',
  },
  'length/lost-space': {
    says: '{got} inesperado, se esperaba una fracción menor que uno; escriba {split} con su espacio, o {meant} si eso es lo que quiso decir.',
    help: 'Un 86½ copiado llega a menudo como 861/2.',
  },
  'length/unit-missing': {
    says: '{got} inesperado sin unidad, se esperaba una de {units}; escriba la unidad detrás.',
  },
  'length/unknown-unit': { says: 'Unidad inesperada {got}, se esperaba una de {units}; escriba una de ellas.' },
  'length/unit-misspelt': { says: 'Unidad inesperada {got}, se esperaba una de {units}; ¿quiso decir {meant}?' },
  'length/linear-weight': {
    says: '{got} inesperado, se esperaba el peso de una superficie, una de {units}; ¿quiso decir {meant}?',
    help: 'La tela que se vende por el peso de un tramo no tiene peso por superficie hasta saber su ancho: divida entre el ancho.',
  },
  'length/mixed-units': {
    says: '{got} inesperado después de {before}, se esperaba una sola unidad; escriba todo en una unidad.',
    help: 'Con pies solo van pulgadas, y con libras onzas.',
  },
  'length/first-not-whole': {
    says: '{got} inesperado antes de {unit}, se esperaba allí un número entero; escriba la fracción con {unit}.',
  },
  'length/carry': {
    says: '{got} inesperado después de {before}, se esperaba menos de {limit}; revise la medida, o pásela a la unidad mayor.',
  },
  'length/too-large': {
    says: '{got} inesperado, se esperaba no más de {most} en ambos sentidos; revise el número y su unidad.',
  },
}
