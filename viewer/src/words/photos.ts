import { type Language, language, type Texts } from '../words.ts'

const en = {
  title: 'Photos',
  take: 'Take a photo',
  choose: 'Choose pictures',
  none: 'No photo yet. Those before the work and of the closed and the open drapery go into the report.',
  unnamed: 'Photo without a name',
  photoOf: 'Photo: {says}',
  marksMany: 'marks: {n}',
  waits: 'waits on this tablet',
  onItsWay: 'on its way, {n} %',
  mark: 'Mark',
  taken: 'Taken',
  shows: 'What it shows',
  marks: 'What is marked',
  markSays: 'What the words say',
  putMark: 'Put there',
  takeAway: 'Take away',
  remove: 'Leave this photo out',
  touchTo: '{says}. Touch, or arrow keys and Enter, to mark: {kind}',
  kinds: { point: 'Point', arrow: 'Arrow', area: 'Area', words: 'Words' },
  ofs: { before: 'before the work', closed: 'closed', open: 'opened', detail: 'a detail', after: 'after mending' },
}
const es: Texts<typeof en> = {
  title: 'Fotos',
  take: 'Tomar una foto',
  choose: 'Elegir imágenes',
  none: 'Aún no hay fotos. Las de antes del trabajo y las de la cortina cerrada y abierta van al informe.',
  unnamed: 'Foto sin nombre',
  photoOf: 'Foto: {says}',
  marksMany: 'marcas: {n}',
  waits: 'espera en esta tableta',
  onItsWay: 'en camino, {n} %',
  mark: 'Marcar',
  taken: 'Tomada',
  shows: 'Lo que muestra',
  marks: 'Lo que está marcado',
  markSays: 'Lo que dicen las palabras',
  putMark: 'Poner ahí',
  takeAway: 'Quitar',
  remove: 'Dejar fuera esta foto',
  touchTo: '{says}. Toca, o usa las flechas y Entrar, para marcar: {kind}',
  kinds: { point: 'Punto', arrow: 'Flecha', area: 'Zona', words: 'Palabras' },
  ofs: { before: 'antes del trabajo', closed: 'cerrada', open: 'abierta', detail: 'un detalle', after: 'después de reparar' },
}
export const photoTables: Readonly<Record<Language, Texts<typeof en>>> = { en, es }

/** What is said about photos. */
export const photoWords = (): Texts<typeof en> => photoTables[language]
