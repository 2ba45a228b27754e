import type { Words } from '@evenhem/plugin'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

/** Checks, sources, fibres and numbers. */
export const checkWords = {
  'finishing/fabric-known': one('What decides how it is steamed is known: {fibre}, in {cloth}.'),
  'finishing/fabric-known.warn': one(
    'Unexpected fibre “{name}” in {cloth}, expected one whose steaming is known here.',
    '{label, select, yes {The care label allows steam: the least of it, from the back, after a try in a hidden place.} other {It is not steamed. Ask the supplier how it is steamed, or write its care label into the order.}}',
  ),
  'finishing/fabric-known.unknown': one(
    '{how, select, none {The order names no fabric here, so nobody knows how it is steamed.} other {The order does not say what {cloth} is made of.}}',
    'Write the fabric, its fibres or its care label into the order; until then it is handled as delicate.',
  ),
  'finishing/care-label': one(
    'The care label of {cloth} allows steam: {by, select, only {“steam only”, without pressing} two {two dots} three {three dots} other {it says nothing against it}} ({source}).',
  ),
  'finishing/care-label.not': one(
    'The care label of {cloth} forbids steam, {by, select, none {“no steam”} crossed {with the iron crossed out} other {with one dot}} ({source}), and none is ordered.',
  ),
  'finishing/care-label.fail': one(
    'Steam is ordered, and the care label of {cloth} forbids it, {by, select, none {“no steam” in any form} crossed {with the iron crossed out} other {with one dot, which is without steam}} ({source}).',
    'The steps follow the label: it is not steamed. Settle it with the workroom and take the steam out of the order.',
  ),
  'finishing/care-label.warn': one(
    'The care label of {cloth} says “steam only” beside an iron {by, select, crossed {that is crossed out} other {with one dot}}, which is without steam ({source}).',
    'The steps follow what forbids. Ask the supplier which is meant.',
  ),
  'finishing/care-label.unknown': one(
    'No care label of {cloth} is in the order; {steam, select, yes {it is steamed as is usual for its fibres} other {it is not steamed}}.',
    'The care label rule of the United States (16 CFR 423) covers clothing, not finished draperies, so there may be none: ask the supplier of the fabric.',
  ),
  'finishing/pile': one(
    '{cloth} is velvet: {steam, select, yes {it is steamed from the back alone, never on its face} other {it is not steamed}}.',
  ),
  'finishing/pile.warn': one(
    '{how, select, side {{cloth} is velvet before a coated back: neither side may be steamed.} other {{cloth} is called velvet, and the order does not say whether it has a pile.}}',
    '{how, select, side {It is not steamed. Settle with the workroom how creases come out.} other {It is handled as velvet. Say `pile` of the fabric.}} Never steam a pile on its face (common practice, no source).',
  ),
  'finishing/water-spots': one('{cloth} can spot; steam left no mark in a hidden place.'),
  'finishing/water-spots.unknown': one(
    'Water can leave spots on {cloth}, and nobody has recorded a try yet.',
    'Try the steam inside a hem or a return, let it dry, and record what it left.',
  ),
  'finishing/water-spots.warn': one(
    'Steam left a mark on {cloth} where it was tried.',
    'It is not steamed any more. Smooth it by hand, and tell the workroom.',
  ),
  'finishing/tie-hours': one('Folds stay tied for {hours} hours; usual are {least} to {most}.'),
  'finishing/tie-hours.warn': one(
    'Unexpected {hours, plural, one {# hour} other {# hours}} of tied folds, expected {least} to {most}.',
    'Shorter folds open again, longer ties leave marks (common practice, no source). Change it if it is not meant.',
  ),
  'finishing/untie-day': one('The ties come off on {date}.'),
  'finishing/untie-day.warn': one(
    'The folds are tied for {hours} hours, and no day is set on which the ties come off.',
    '{date, select, none {Record the day on which it was hung, or set the day itself.} other {Counted from the day on which it was hung that is {date}.}}',
  ),
  'finishing/way-untie': one('Take the ties off on {date}, {hours} hours after it was hung.'),
  'finishing/content': one('Installer and customer are both content.'),
  'finishing/content.unknown': one(
    'Nobody has recorded yet that installer and customer are both content.',
    'Stand back together, and record who is.',
  ),
  'finishing/content.warn': one(
    '{who, select, installer {The installer is content, the customer is not.} customer {The customer is content, the installer is not.} other {Neither the installer nor the customer is content.}}',
    'Write down what is not right, who mends it and by when.',
  ),
  'finishing/source-symbols': one('care symbol tables after ISO 3758'),
  'finishing/source-terms': one('16 CFR 423, care labeling rule of the United States'),
  'finishing/source-practice': one('common practice, no source'),
  'finishing/source-none': one('no label'),
  'finishing/source-plates': one(
    'the coolest of the irons that its cloths bear, in °C',
    'Dots of the care label: tables after ISO 3758, which itself was not read. Without a label, by fibre: The Spruce, “Select the correct ironing temperature for fabrics”, and TextileTuts, “Iron temperature guide”; of two figures the lower. The label rules over the fibres (common practice, no source).',
  ),
  'finishing/plate-limit': one('hottest iron, °C'),
  'finishing/plate-200': one('three dots, °C'),
  'finishing/plate-150': one('two dots, °C'),
  'finishing/plate-110': one('one dot, °C'),
  'finishing/plate-linen': one('linen, °C'),
  'finishing/plate-cotton': one('cotton, °C'),
  'finishing/plate-viscose': one('viscose, °C'),
  'finishing/plate-wool': one('wool, °C'),
  'finishing/plate-silk': one('silk, °C'),
  'finishing/plate-polyester': one('polyester, °C'),
  'finishing/plate-acetate': one('acetate, °C'),
  'finishing/plate-triacetate': one('triacetate, °C'),
  'finishing/plate-nylon': one('nylon, °C'),
  'finishing/plate-acrylic': one('acrylic, °C'),
  'finishing/plate-elastane': one('elastane, °C'),
  'finishing/fibre-linen': one('linen'),
  'finishing/fibre-cotton': one('cotton'),
  'finishing/fibre-viscose': one('viscose'),
  'finishing/fibre-wool': one('wool'),
  'finishing/fibre-silk': one('silk'),
  'finishing/fibre-polyester': one('polyester'),
  'finishing/fibre-acetate': one('acetate'),
  'finishing/fibre-triacetate': one('triacetate'),
  'finishing/fibre-nylon': one('nylon'),
  'finishing/fibre-acrylic': one('acrylic'),
  'finishing/fibre-elastane': one('elastane'),
  'finishing/fibre-unknown': one('a fibre that is not known'),
  'finishing/heading-over-rod': one('heading above the top of the rod'),
  'finishing/top-of-drapery': one('top of drapery'),
  'finishing/top-of-rod': one('top of rod'),
} satisfies Words
