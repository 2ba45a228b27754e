import type { JobCode } from './words.ts'

/** The sentences of `jobWords` in Spanish. */
export const spanishJobWords: Readonly<Record<JobCode, { readonly says: string; readonly help?: string }>> = {
  // The bytes.
  'job/utf-8': {
    says: 'Byte inesperado {byte} en el byte {number}, se esperaba UTF-8; guarde el archivo como UTF-8.',
    help: 'No se leyó nada de lo que sigue: adivinar cambiaría nombres y direcciones.',
  },
  'job/utf-16': { says: 'UTF-16 inesperado, se esperaba UTF-8; guarde el archivo como UTF-8.' },
  'job/byte-order-mark': {
    says: 'Marca de orden de bytes inesperada, se esperaba el comienzo del texto; no hay que hacer nada, se pasa por alto.',
    help: 'Algunos editores la escriben. Al guardar como UTF-8 sin ella, desaparece.',
  },

  // The syntax.
  'job/empty': { says: 'Archivo vacío inesperado, se esperaba un trabajo; escriba uno, empezando con una llave.' },
  'job/too-deep': {
    says: 'Llave o corchete inesperado a {most} niveles de profundidad, se esperaban menos; deshaga el anidamiento.',
    help: 'No se leyó nada de lo que sigue.',
  },
  'job/comment': {
    says: 'Comentario inesperado, se esperaba JSON sin comentarios; quítelo.',
    help: 'Un “note” en “job” se muestra a quien abre el trabajo.',
  },
  'job/space': {
    says: 'Espacio inesperado {got}, se esperaba un espacio sencillo; escriba uno.',
    help: 'Esos espacios llegan cuando se copia texto de una página o de una carta.',
  },
  'job/trailing-comma': {
    says: 'Coma inesperada antes de {closes}, no se esperaba ninguna coma después de lo último; quítela.',
  },
  'job/extra-comma': { says: 'Coma inesperada, se esperaba algo delante de ella; quítela.' },
  'job/missing-comma': {
    says: 'Final inesperado de esto sin coma, se esperaba una antes de lo que sigue; ponga aquí una coma.',
  },
  'job/missing-colon': {
    says: 'Nombre inesperado sin dos puntos, se esperaban dos puntos y un valor; escriba aquí los dos puntos.',
  },
  'job/missing-name': {
    says: '{got} inesperado, se esperaba un nombre entre comillas dobles; escriba delante el nombre y dos puntos.',
  },
  'job/missing-value': { says: '{got} inesperado, se esperaba un valor; escriba uno, o quite el nombre.' },
  'job/ends-early': { says: 'Final inesperado del archivo, se esperaba un valor; escriba lo que falta.' },
  'job/unclosed': {
    says: '{got} inesperado, se esperaba {closes} para {opens} de la línea {otherLine}, columna {otherColumn}; cierre eso primero.',
  },
  'job/unclosed-at-end': {
    says: 'Final inesperado del archivo, se esperaba {closes} para {opens} de la línea {otherLine}, columna {otherColumn}; ciérrelo.',
  },
  'job/unexpected': { says: '{got} inesperado, se esperaba {expected}; revise las llaves y los corchetes de alrededor.' },
  'job/stray': { says: '{got} inesperado, se esperaba un valor; quítelo.' },
  'job/after-end': {
    says: '{got} inesperado después del trabajo, se esperaba el final del archivo; quite lo que sigue.',
  },
  'job/quotes': {
    says: '{got} inesperado, se esperaban comillas dobles rectas; escriba {meant}.',
    help: 'Los procesadores de texto convierten las comillas rectas en curvas.',
  },
  'job/open-text': {
    says: 'Final de línea inesperado entre comillas, se esperaba la comilla de cierre; escríbala donde termina el texto.',
    help: 'El texto va en una sola línea; \\n en él representa una línea nueva.',
  },
  'job/control-character': {
    says: 'Carácter de control inesperado {got} entre comillas, se esperaba escrito con letras; quítelo, o escriba \\t por un tabulador.',
  },
  'job/escape': {
    says: '{got} inesperado entre comillas, se esperaba un escape conocido; escriba \\\\ por una barra invertida.',
    help: 'Se conocen \\" \\\\ \\/ \\b \\f \\n \\r \\t y \\u con cuatro cifras.',
  },
  'job/bare-name': { says: '{got} inesperado sin comillas, se esperaba un nombre entre comillas dobles; escriba {meant}.' },
  'job/bare-word': { says: '{got} inesperado sin comillas, se esperaba un valor; escriba {meant} si es texto.' },
  'job/word-near': { says: '{got} inesperado, se esperaba un valor; escriba {meant}.' },
  'job/bare-length': {
    says: '{got} inesperado sin comillas, se esperaba un número sencillo; escriba {meant}.',
    help: 'Una fracción o una unidad lo convierte en texto, y el texto va entre comillas.',
  },
  'job/number-form': { says: '{got} inesperado, se esperaba un número como lo escribe JSON; escriba {meant}.' },
  'job/no-number': {
    says: '{got} inesperado, se esperaba un número; escríbalo con cifras, o póngalo entre comillas si es texto.',
  },

  // What reading would change in silence.
  'job/name-twice': {
    says: 'Segundo “{name}” inesperado, se esperaba cada nombre una sola vez; el primero está en la línea {otherLine}, columna {otherColumn}, deje el que vale.',
  },
  'job/surrogate': {
    says: 'Mitad de un carácter inesperada, {got}, se esperaban las dos mitades o ninguna; escriba el carácter mismo.',
  },
  'job/number-too-large': {
    says: '{got} inesperado, se esperaba un número que quepa en una computadora; revise sus cifras.',
  },
  'job/number-not-kept': {
    says: '{got} inesperado, se esperaban no más cifras de las que se conservan; se leería como {kept}, escriba eso si es lo que quiso decir.',
  },
  'job/minus-zero': { says: '{got} inesperado, se esperaba 0 sin signo; escriba 0.' },
  'job/length-rounded': {
    says: '{got} inesperado, se esperaba una longitud que termine; no hay que hacer nada, se redondea al nanómetro.',
  },

  // The schema.
  'job/no-object': { says: '{got} inesperado, se esperaba un trabajo entre llaves; empiece con una llave.' },
  'job/newer-format': {
    says: 'Formato inesperado {got}, se esperaba evenhem-job/1; abra este trabajo con un Evenhem más nuevo.',
  },
  'job/no-catalogue': { says: '{got} inesperado, se esperaba un catálogo entre llaves; empiece con una llave de apertura.' },
  'job/newer-catalogue': {
    says: 'Formato inesperado {got}, se esperaba evenhem-catalogue/1; abra este catálogo con un Evenhem más nuevo.',
  },
  'job/missing': { says: 'Falta inesperada, se esperaba “{name}” aquí; escríbalo.', help: '{what}' },
  'job/missing-plain': { says: 'Falta inesperada, se esperaba “{name}” aquí; escríbalo.' },
  'job/unknown-member': {
    says: '“{name}” inesperado, se esperaba uno de {members}; quítelo.',
    help: 'Lo que añade un complemento va en “with”.',
  },
  'job/unknown-member-near': {
    says: '“{name}” inesperado, se esperaba “{near}”; escriba eso si es lo que quiso decir.',
    help: 'Aquí se conocen: {members}.',
  },
  'job/no-members': { says: '“{name}” inesperado, no se esperaba nada aquí; quítelo.' },
  'job/type': { says: '{got} inesperado, se esperaba uno de estos tipos: {expected}; escriba eso.' },
  'job/type-text': { says: '{got} inesperado, se esperaba texto; escríbalo entre comillas dobles.' },
  'job/type-number': { says: '{got} inesperado, se esperaba un número; escríbalo con cifras y sin comillas.' },
  'job/type-whole-number': {
    says: '{got} inesperado, se esperaba un número entero; escríbalo con cifras y sin comillas.',
  },
  'job/type-truth': { says: '{got} inesperado, se esperaba true o false; escriba uno de los dos sin comillas.' },
  'job/type-object': { says: '{got} inesperado, se esperaban miembros entre llaves; escríbalo así.' },
  'job/type-list': { says: '{got} inesperado, se esperaba una lista entre corchetes; póngalo entre corchetes.' },
  'job/type-length': { says: '{got} inesperado, se esperaba una longitud; escríbala como "86 1/2" u 86.5.' },
  'job/choice': { says: '{got} inesperado, se esperaba uno de {allowed}; escriba uno de ellos.' },
  'job/choice-near': {
    says: '{got} inesperado, se esperaba {near}; escriba eso si es lo que quiso decir.',
    help: 'Aquí se conocen: {allowed}.',
  },
  'job/id': { says: '{got} inesperado, se esperaba un id de letras minúsculas, cifras y guiones; escriba uno.' },
  'job/id-near': {
    says: '{got} inesperado, se esperaba un id de letras minúsculas, cifras y guiones; escriba {meant}.',
    help: 'Son 40 como máximo y empiezan con una letra o una cifra. La gente ve el “name”, no el id.',
  },
  'job/pattern': { says: '{got} inesperado, se esperaba otra forma; escríbalo así: {what}', help: 'La forma es {pattern}' },
  'job/date': { says: '{got} inesperado, se esperaba un día del calendario; escríbalo como "2026-11-30".' },
  'job/date-time': {
    says: '{got} inesperado, se esperaban un día, una hora y su desfase; escríbalo como "2026-11-30T09:12:00-05:00".',
  },
  'job/empty-text': { says: 'Texto vacío inesperado, se esperaba algo; escríbalo, o quite el nombre.' },
  'job/text-too-short': { says: '{got} inesperado, se esperaban al menos {limit} caracteres; escriba más.' },
  'job/text-too-long': { says: '{got} inesperado, se esperaban {limit} caracteres como máximo; escriba menos.' },
  'job/too-small': { says: '{got} inesperado, se esperaba {limit} o más; revise el número.' },
  'job/too-small-or-equal': { says: '{got} inesperado, se esperaba más de {limit}; revise el número.' },
  'job/too-large': { says: '{got} inesperado, se esperaba {limit} o menos; revise el número.' },
  'job/too-large-or-equal': { says: '{got} inesperado, se esperaba menos de {limit}; revise el número.' },
  'job/step': { says: '{got} inesperado, se esperaba un múltiplo de {step}; revise el número.' },
  'job/too-few': {
    says: 'Cantidad de elementos inesperada, {got}, se esperaban al menos {limit}; añada lo que falta.',
  },
  'job/too-many': {
    says: 'Cantidad de elementos inesperada, {got}, se esperaban {limit} como máximo; esta versión no admite más aquí.',
  },
  'job/refused': {
    says: '{got} inesperado, se esperaba lo que pide el esquema con “{keyword}”: {message}; revise el esquema.',
  },

  // Lengths and names.
  'job/absurd-length': {
    says: '{got} inesperado ({is}), se esperaba de {least} a {most}; revise el número y su unidad.',
  },
  'job/absurd-length-unit': {
    says: '{got} inesperado ({is}), se esperaba de {least} a {most}; ¿quiso decir {guess}? Entonces escriba la unidad.',
  },
  'job/absurd-length-units': {
    says: '{got} inesperado ({is}), se esperaba de {least} a {most}; ¿cuál quiso decir: {guess}? Escriba la unidad.',
  },
  'job/id-twice': {
    says: 'Segundo “{id}” inesperado, se esperaba cada id una sola vez en su lista; el primero está en la línea {otherLine}, columna {otherColumn}, dé otro id a uno de los dos.',
  },
  'job/names-nothing': {
    says: '“{id}” inesperado, se esperaba un id de “{list}”: {ids}; escriba uno de ellos, o añada la entrada.',
  },
  'job/names-nothing-near': {
    says: '“{id}” inesperado, se esperaba un id de “{list}”; escriba “{near}” si es lo que quiso decir.',
    help: 'Aquí se conocen: {ids}.',
  },
  'job/names-nothing-at-all': {
    says: '“{id}” inesperado, se esperaba un id de “{list}”, donde no hay ninguno; añada la entrada.',
  },

  // Plugins.
  'job/unknown-kind': {
    says: 'Tipo inesperado “{kind}”, se esperaba uno que se conozca aquí; no hay que hacer nada, se conserva como está y no se revisa.',
  },
  'job/unknown-kind-near': {
    says: 'Tipo inesperado “{kind}”, se esperaba uno que se conozca aquí; escriba “{near}” si es lo que quiso decir.',
    help: 'Se conserva como está y no se revisa.',
  },
  'job/unknown-part': {
    says: 'Parte inesperada de “{plugin}”, se esperaba un complemento que se conozca aquí; no hay que hacer nada, se conserva como está y no se revisa.',
  },
  'job/unknown-part-near': {
    says: 'Parte inesperada de “{plugin}”, se esperaba un complemento que se conozca aquí; escriba “{near}” si es lo que quiso decir.',
    help: 'Se conserva como está y no se revisa.',
  },
  'job/unknown-plugin': {
    says: 'Complemento inesperado “{plugin}”, se esperaba uno que se conozca aquí; no hay que hacer nada, no se usa nada de él.',
  },
  'job/newer-plugin': {
    says: 'Versión inesperada {version} de “{plugin}”, se esperaba {ours} o menos; un Evenhem más nuevo puede revisarla, aquí se conserva como está.',
  },
  'job/part-not-here': {
    says: 'Parte inesperada de “{plugin}” en {level}, no se esperaba ninguna allí; quítela, o póngala donde corresponde.',
    help: 'Su complemento no añade nada en este nivel, o no a este tipo de herraje. No se revisa y nadie la lee.',
  },
  'job/uses-lacks': {
    says: 'Parte inesperada de “{plugin}”, se esperaba que también estuviera en “uses”; añada {write}.',
    help: 'Así un Evenhem más nuevo sabe qué versión se escribió.',
  },
  'job/no-uses': {
    says: 'Parte inesperada de “{plugin}”, se esperaba que “uses” lo nombrara; añada “uses” con {write}.',
    help: 'Así un Evenhem más nuevo sabe qué versión se escribió.',
  },
  'job/upgraded': {
    says: 'Versión anterior inesperada de “{plugin}”, se esperaba {to}; no hay que hacer nada, se lee como {to}: {because}',
  },
  'job/upgrade-failed': {
    says: 'Versión anterior inesperada de “{plugin}”, se esperaba {to}; no se pudo llevar hasta ella: {thrown}',
    help: 'El paso era: {because}',
  },

  // Readings.
  'job/reading-no-place': {
    says: '“{place}” inesperado, se esperaba un lugar, empezando con una barra; escríbalo como /rooms/den/windows/w1/…',
  },
  'job/reading-nowhere': {
    says: '“{name}” inesperado en este lugar, se esperaba uno de {names}; escriba uno de ellos.',
    help: 'La medida se deja fuera.',
  },
  'job/reading-nowhere-near': {
    says: '“{name}” inesperado en este lugar, se esperaba “{near}”; escriba eso si es lo que quiso decir.',
    help: 'La medida se deja fuera. Aquí se conocen: {names}.',
  },
  'job/reading-unknown': {
    says: '“{name}” inesperado en este lugar, se esperaba uno de {names}; escriba uno de ellos.',
    help: 'La medida se deja fuera.',
  },
  'job/reading-unknown-near': {
    says: '“{name}” inesperado en este lugar, se esperaba “{near}”; escriba eso si es lo que quiso decir.',
    help: 'La medida se deja fuera. Aquí se conocen: {names}.',
  },
  'job/reading-of-much': {
    says: 'Medida inesperada de un elemento entero, se esperaba el lugar de un solo valor; escriba una medida para cada uno.',
    help: 'La medida se deja fuera.',
  },
  'job/reading-kept': {
    says: 'Medida inesperada de una parte de “{plugin}”, se esperaba un complemento que se conozca aquí en esta versión; no hay que hacer nada, se conserva y no se usa.',
  },

  'job/catalogue-path': {
    says: 'Ruta “{got}” inesperada, se esperaba un archivo .json en la carpeta de este trabajo o en la que la contiene, como “../catalogue.json”; mueva el archivo allí.',
  },
  'job/catalogue-missing': {
    says: 'Falta inesperada, se esperaba un catálogo en “{got}”; ponga allí el archivo, o lleve sus entradas al trabajo.',
  },
  'job/catalogue-outside': {
    says: 'Enlace inesperado “{got}” a un archivo de otro lugar, se esperaba un archivo .json que esté de verdad en la carpeta de este trabajo o en la que la contiene; copie el archivo allí.',
  },
  'job/catalogue-no-file': {
    says: 'Carpeta, tubería o dispositivo inesperado en “{got}”, se esperaba un archivo; ponga allí el catálogo.',
  },
  'job/catalogue-too-large': {
    says: '{size} MB inesperados en “{got}”, se esperaba un catálogo de {most} MB o menos; divídalo en varios.',
  },
  'job/catalogue-unreadable': {
    says: 'Respuesta inesperada {error} del sistema para “{got}”, se esperaba un archivo que se pueda leer; mire adónde lleva y quién puede leerlo.',
  },
  'job/catalogue-broken': {
    says: 'Errores inesperados en “{got}”, {count} en total, se esperaba un catálogo sin ninguno; ejecute check con ese archivo y corríjalos.',
  },
  'job/catalogue-chain': {
    says: '“from” inesperado en un catálogo, se esperaban entradas con todos sus datos; escríbalos aquí, pues un catálogo no toma nada de otro.',
  },
  'job/catalogue-unknown': {
    says: '“{got}” inesperado, se esperaba uno de los catálogos de este trabajo: {names}; escriba uno de ellos, o añádalo en “catalogues”.',
  },
  'job/catalogue-unknown-near': {
    says: '“{got}” inesperado, se esperaba “{near}”; escriba eso si es lo que quiso decir.',
    help: 'Catálogos de este trabajo: {names}.',
  },
  'job/catalogue-item': {
    says: '“{got}” inesperado, se esperaba algo de lo que tiene el catálogo: {names}; escriba uno de ellos.',
  },
  'job/catalogue-item-near': {
    says: '“{got}” inesperado, se esperaba “{near}”; escriba eso si es lo que quiso decir.',
    help: 'El catálogo tiene: {names}.',
  },
  'job/catalogue-kind': {
    says: 'Clase {got} inesperada, se esperaba {expected}, que es la de “{item}” en el catálogo; escriba esa, o tome otra cosa.',
  },
  'job/catalogue-changed': {
    says: '{got} inesperado en esta copia fija, se esperaba {now}, que es lo que dice ahora el catálogo; tome el valor nuevo, o déjelo: vale la copia.',
  },
  'job/more': {
    says: 'Cantidad de hallazgos inesperada, se esperaban no más de {most}; corrija estos y revise otra vez.',
  },
}
