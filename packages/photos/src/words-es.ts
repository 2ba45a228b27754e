import type { PhotoCode } from './words.ts'

/** The same in Spanish. */
export const spanishPhotoWords: Readonly<Record<PhotoCode, string>> = {
  'photo/empty': 'Archivo sin contenido; se esperaba una foto; cópiela de nuevo.',
  'photo/too-big': 'Tamaño inesperado de {size} MB; se esperaban {most} MB como máximo; mande una copia más pequeña.',
  'photo/format': 'Contenido inesperado; se esperaba una foto en JPEG, PNG, WebP o HEIC; guárdela en uno de estos formatos.',
  'photo/too-many-pixels':
    'La foto tiene {pixels} megapíxeles; se esperaban {most} como máximo; tómela con menos resolución o mande una copia más pequeña.',
  'photo/damaged': 'La foto está dañada o se corta antes del final; se esperaba una completa; cópiela de nuevo o tome otra.',
  'photo/too-slow':
    'La foto no se pudo leer en {seconds} segundos; se esperaba una que se lea en ese tiempo; guárdela de nuevo o tome otra.',
  'photo/too-much-memory':
    'La foto necesita más de {most} MB de memoria para leerse; se esperaba una que necesite menos; mande una copia más pequeña.',
  'photo/stops-reader':
    'La foto detiene al programa que la lee; se esperaba una que se pueda leer; guárdela de nuevo o tome otra.',
  'photo/other-name':
    'El contenido no es el de la foto de ese nombre; se esperaba esa foto; se dañó o se cambió, tómela de otra copia de la carpeta.',
  'photo/elsewhere': 'Enlace inesperado a otro lugar; se esperaba la foto misma; ponga ahí una copia.',
  'photo/unreadable':
    'Respuesta inesperada del disco ({code}); se esperaba un archivo que se pueda leer; tómelo de otra copia de la carpeta.',
  'photo/other-content':
    'El contenido no es el de la foto anunciada; se esperaba esa foto; algo se perdió en el camino, mándela de nuevo.',
}
