import type { photosEnglish } from './words-photos.ts'

/** The same in Spanish. */
export const photosSpanish: Readonly<Record<keyof typeof photosEnglish, string>> = {
  'arg.files': 'archivos…',
  photos: 'Lista las fotos de la carpeta de un trabajo y qué ventanas muestran.',
  'photos.more':
    'Una línea por foto: las primeras ocho cifras de su nombre, su tamaño, su ventana y lo que muestra allí. Una foto se nombra por su contenido; también se lista la que una tableta anotó y todavía no mandó.',
  'photos-add': 'Añade fotos a la carpeta de un trabajo: JPEG, PNG, WebP o HEIC.',
  'photos-add.more':
    'Cada una se guarda en photos/ con el SHA-256 de su contenido por nombre, tal como es; en photos/small/ se hacen copias limpias, derechas y sin ubicación ni ningún otro dato privado. Solo se muestran esas. Código de salida 1: se rechazó una foto. 2: no se pudo leer un archivo.',
  '--window.photos': 'Las anota en esta ventana, cada una con el nombre de su archivo.',
  '--cleaned': 'Guarda solo la copia limpia de cada una, de 1600 píxeles, y no el archivo tal como es.',
  'photo-taken': 'añadida',
  'photo-there': 'ya estaba',
  'photo-unreadable': 'Archivo inesperado; se esperaba uno que se pueda leer; {why}',
  'photo-not-sent': 'todavía no está aquí',
  'photos-done': '{done} de {total} fotos',
  'no-photos': 'Todavía no hay fotos en {folder}; evenhem photos add {folder} <archivos…> las añade.',
  'photos-no-folder':
    'Archivo de trabajo inesperado {file}; se esperaba una carpeta con job.json, donde caben fotos; nombre su carpeta',
  'photos-not-kept':
    'Respuesta inesperada del disco ({error}) en {folder}; se esperaba sitio para fotos; haga sitio o repare el disco y añádalas de nuevo, que no hace daño',
  'photos-not-recorded': 'Registro inesperado de {folder}; se esperaba uno que acepte anotaciones de este escritorio; {why}',
}
