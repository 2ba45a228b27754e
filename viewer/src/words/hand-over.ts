import { type Language, language, type Texts } from '../words.ts'

const en = {
  title: 'Hand over',
  windows: 'The windows',
  stepsGone: '{n} of {m} steps',
  left: 'Left open',
  nothingLeft: 'Nothing is left open.',
  unfinishedOne: 'One window has steps that are not done.',
  unfinishedMany: '{n} windows have steps that are not done.',
  firm: 'Somebody can be hurt. Nothing is handed over before this is mended:',
  signed: 'Signed so far',
  who: 'Who signs',
  roles: { customer: 'Customer', installer: 'Installer' },
  accepts: 'The customer accepts',
  acceptances: {
    'without open points': 'Everything, nothing is left open',
    'with open points': 'With the points that are left open',
  },
  name: 'Name',
  leftHere: 'Left with the customer: spares, remotes',
  pad: 'Sign here with a finger or a pen',
  clear: 'Sign again',
  typed: 'The name in letters counts as the signature',
  go: 'Signed',
  lacks: 'A name and a signature are wanted, or the name in letters.',
  lacksChoice: 'Choose how the customer accepts.',
  lookedAtAgain: 'Something was entered just now, and the house is looked at again. Look, then sign.',
  note: 'What is signed: this order, all that was entered, and its photos. What is entered later is told apart.',
}
const es: Texts<typeof en> = {
  title: 'Entregar',
  windows: 'Las ventanas',
  stepsGone: '{n} de {m} pasos',
  left: 'Queda pendiente',
  nothingLeft: 'No queda nada pendiente.',
  unfinishedOne: 'Una ventana tiene pasos sin hacer.',
  unfinishedMany: '{n} ventanas tienen pasos sin hacer.',
  firm: 'Alguien puede hacerse daño. No se entrega nada antes de arreglarlo:',
  signed: 'Firmado hasta ahora',
  who: 'Quién firma',
  roles: { customer: 'Cliente', installer: 'Instalador' },
  accepts: 'El cliente acepta',
  acceptances: {
    'without open points': 'Todo, no queda nada pendiente',
    'with open points': 'Con los puntos que quedan pendientes',
  },
  name: 'Nombre',
  leftHere: 'Lo que se deja al cliente: repuestos, mandos',
  pad: 'Firme aquí con el dedo o un lápiz',
  clear: 'Firmar otra vez',
  typed: 'El nombre escrito vale como firma',
  go: 'Firmado',
  lacks: 'Hacen falta un nombre y una firma, o el nombre escrito.',
  lacksChoice: 'Elija cómo acepta el cliente.',
  lookedAtAgain: 'Acaba de anotarse algo y la casa se revisa otra vez. Mire y luego firme.',
  note: 'Lo que se firma: este pedido, todo lo anotado y sus fotos. Lo que se anote después se distingue.',
}
export const handOverTables: Readonly<Record<Language, Texts<typeof en>>> = { en, es }

/** What is said at the hand-over. */
export const handOverWords = (): Texts<typeof en> => handOverTables[language]
