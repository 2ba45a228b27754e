import type { verifyEnglish } from './words-verify.ts'

/** The same in Spanish. */
export const verifySpanish: Readonly<Record<keyof typeof verifyEnglish, string>> = {
  verify: 'Dice si el trabajo, el registro, las fotos y el informe están como se firmaron.',
  'verify.more':
    'Para cada firma: si job.json, cada línea del registro y cada foto están como cuando alguien firmó, y el archivo y la línea de lo que difiere. También se miran las cadenas del registro, los bytes de cada foto contra su nombre, las fotos que el registro nombra y un informe junto a report.seal.json. Lo que se añadió después de firmar se dice y no es una falta. Prueba que los archivos van juntos, no quién los escribió. Código de salida 1: algo difiere.',
  'verify-no-folder':
    'Archivo de trabajo inesperado {file}; se esperaba una carpeta con job.json, un registro y fotos; nombre su carpeta',
  'verify-unread': '{path} inesperado; se esperaba una carpeta que se pueda leer; {why}',

  'verify-signed': '{role, select, customer {Cliente} other {Instalador}} {name}, {when}, {at}',
  'verify-put-over': 'Esta firma se retiró o se puso otra encima; no es una falta.',
  'verify-accepts': '{accepts, select, with {Aceptado con puntos pendientes} other {Aceptado sin puntos pendientes}}',
  'verify-part.job': 'archivo job.json',
  'verify-part.log': 'registro',
  'verify-part.photos': 'fotos',
  'verify-part.signature': 'firma',
  'verify-as-signed': 'como se firmó',
  'verify-differs': 'no como se firmó',
  'seal/job':
    'Cambio inesperado de job.json desde que alguien firmó; se esperaban los mismos bytes; reponga el archivo que se firmó',
  'seal/signature': 'Cambio inesperado en la firma misma; se esperaba como se puso; compárela con otra copia de la carpeta',
  'seal/line-changed':
    'Otro contenido inesperado de la anotación {by}:{n}; se esperaba la línea que se firmó; compárela con otra copia de la carpeta',
  'seal/line-missing':
    '{count, plural, one {Falta inesperada de la anotación {by}:{n}} other {Falta inesperada de # anotaciones desde {by}:{n}}}; se esperaban todas las líneas que se firmaron; evenhem merge las toma de una copia que las tenga',
  'seal/chain':
    'Línea inesperada antes de la anotación {by}:{n}; se esperaba aquella tras la que se escribió; compárela con otra copia de la carpeta',
  'seal/photos':
    'Fotos inesperadas en las líneas firmadas; se esperaban las de la firma; compare el registro con otra copia de la carpeta',
  'seal/photo':
    'Falta inesperada de la foto {photo} tal como se firmó; se esperaban sus bytes; cópiela de la tableta o de otra copia de la carpeta',
  'seal/after':
    'Después {count, plural, one {llegó # anotación} other {llegaron # anotaciones}} de {by}, desde {at}; no es una falta.',

  'verify-elsewhere': 'En la carpeta',
  'verify-no-seal': 'Firma inesperada sin un sello que se pueda leer; se esperaba uno; firme de nuevo en una tableta',
  'verify-photo-changed':
    'Bytes inesperados de una foto; se esperaban los que dan su nombre; cópiela de la tableta o de otra copia de la carpeta',
  'verify-photo-lacks':
    'Falta inesperada de la foto {photo}, que esta anotación nombra; cópiela de la tableta o de otra copia de la carpeta',
  'verify-photo-cleaned': 'De esta foto solo se guardó una copia limpia: nada prueba sus bytes.',
  'verify-report-seal':
    'Contenido inesperado; se esperaba el nombre de un informe junto a él y su SHA-256, {example}; escriba el informe de nuevo',
  'verify-report-lacks': 'Falta inesperada de {name}; se esperaba el informe junto a su sello; repóngalo o escríbalo de nuevo',
  'verify-report-changed': 'Bytes inesperados del informe; se esperaban los de su sello; reponga el informe o escríbalo de nuevo',

  'verify-good': 'Todo va junto.',
  'verify-bad': 'No todo va junto.',
  'verify-unsigned': 'Todavía no hay nada firmado en {folder}.',
}
