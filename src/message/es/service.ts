import type { SupplyKind, ToolKind } from '../../procedure/index.js'
import type { PartName, ServiceCodes } from '../../service/index.js'
import type { Say, Texts } from '../catalogue.js'
import { capitalize, nameOf } from '../phrases.js'
import { cardWords } from './card.js'
import { join, quote, SIGNAL_WORDS, withDe, writeFacts, writeMeter } from './words.js'

const SUPPLY_NAMES: Readonly<Record<SupplyKind | 'suction pump', string>> = {
  rags: 'trapos',
  'gloves and goggles': 'guantes y gafas',
  oil: 'aceite',
  additive: 'aditivo',
  seal: 'juntas nuevas',
  sealant: 'sellador',
  'sample bottle': 'una botella de muestra limpia y seca, con tapa, para cada muestra de aceite',
  solvent: 'disolvente, y una cubeta para lavar el colador',
  'suction pump': 'una bomba de aspiración con una manguera que llegue al fondo de la caja',
  'used-oil container': 'un recipiente cerrado con el letrero de aceite usado',
}

const TOOL_NAMES: Readonly<Record<ToolKind, string>> = {
  chocks: 'calzos',
  jack: 'gato',
  stands: 'caballetes',
  ramps: 'rampas',
  brush: 'cepillo',
  'socket or key': 'llave fija o de vaso',
  'drain pan': 'bandeja de drenaje',
  'suction pump': 'bomba de aspiración',
  scraper: 'rascador',
  'measuring vessel': 'jarra graduada',
  'funnel and hose': 'embudo y manguera',
  'torque wrench': 'llave dinamométrica',
  'breaker bar': 'barra de fuerza',
}

const writeRole = (role: string): string => nameOf(cardWords.roles, role).toLowerCase()

/** `rear gearcase, left: drain plug`. */
function writePart({ gearcase, part, instance }: PartName): string {
  const placeText = [gearcase, instance?.name].filter((word) => word !== undefined).join(', ')
  if (part === undefined) return placeText === '' ? 'la máquina' : placeText
  return placeText === '' ? part : `${placeText}: ${part}`
}

/** `Rear gearcase, left: drain plug`, to begin a sentence. */
const startWithPart = (part: PartName): string => capitalize(writePart(part))

/** `de la variante y del número de serie` */
const writeOfFacts = (facts: readonly string[], say: Say): string => say.list(writeFacts(facts).map(withDe))

/** `2019 a 2021`, `desde KA004512`. */
function writeRange(from: string | number | undefined, to: string | number | undefined, prefix = ''): string {
  if (from === undefined) return to === undefined ? `que empiezan por ${prefix}` : `hasta ${prefix}${to}`
  return to === undefined ? `desde ${prefix}${from}` : `${prefix}${from} a ${prefix}${to}`
}

/** `80 a 95 h`, `al menos 80 h`; rounded to two digits after a word such as `aprox.`. */
function writeAmount(
  { min, max, unit }: { readonly min?: number; readonly max?: number; readonly unit: string },
  say: Say,
  about = '',
): string {
  const writeQuantity = (value: number) =>
    say.quantity({ value: about === '' ? value : Number(value.toPrecision(2)), unit })
  if (min === undefined) return max === undefined ? '' : `como máximo ${writeQuantity(max)}`
  if (max === undefined) return `al menos ${writeQuantity(min)}`
  return writeQuantity(min) === writeQuantity(max)
    ? `${about}${writeQuantity(min)}`
    : `${about}${writeQuantity(min)} a ${writeQuantity(max)}`
}

export const serviceTexts: Texts<ServiceCodes> = {
  'service/part-not-known': ({ part, facts }, say) =>
    `No se sabe si esta máquina tiene esta pieza (${writePart(part)}). Averiguar ${say.list(writeFacts(facts))}.`,
  'service/variant-not-known': ({ facts, candidates }, say) =>
    `No se conoce la variante: ${join(candidates, 'o')}. Averiguar ${say.list(writeFacts(facts))}.`,
  'service/variant-contradicted': ({ candidates }) =>
    candidates.length === 0
      ? 'Los datos del historial no corresponden a ninguna variante de la hoja de datos. Comprobar la placa.'
      : `El historial se contradice: sus otros datos corresponden a ${join(candidates, 'o')}, no a la variante que nombra. Comprobar la placa.`,
  'service/figure-not-stated': ({ part, role }) =>
    role === 'fasteners'
      ? `${startWithPart(part)}: número de tornillos sin indicar. Contarlos.`
      : `${startWithPart(part)}: ${writeRole(role)} sin indicar. Ver el manual.`,
  'service/figure-not-known': ({ part, role, facts }, say) =>
    `${startWithPart(part)}: ${writeRole(role)} depende ${writeOfFacts(facts, say)}. Averiguarlo primero.`,
  'service/torque-not-settled': ({ part }) =>
    `${startWithPart(part)}: el par se indica, pero no se halló ningún ajuste de llave. Ver “${cardWords.sections.tightening}”.`,
  'service/settings-need-toolbox': ({ parts }) =>
    `No hay caja de herramientas, así que los pares indicados no tienen ajuste de llave (${parts.map(writePart).join('; ')}). Dar una caja de herramientas.`,
  'service/due-not-known': ({ parts, service, reason }, say) =>
    `No se sabe si está pendiente: ${service} (${parts.map(writePart).join('; ')}). ${say.reason(reason)}`,
  'service/ambient-not-given': ({ part }) =>
    `No se dio la temperatura ambiente; el aceite no se eligió según ella (${writePart(part)}).`,
  'service/no-toolbox': () => 'No hay caja de herramientas: llaves, jarra y bandeja sin comprobar.',
  'service/no-stock': () => 'No hay existencias: todo figura para comprar.',
  'service/viscosity-not-known': ({ oil }) =>
    `No se conoce la viscosidad de ${oil} a esta temperatura, así que no se calcula el tiempo de vertido.`,
  'service/oil-for-ambient': ({ oil, ambient }, say) =>
    `A ${say.quantity(ambient)} la hoja de datos permite ${oil}.`,
  'service/several-suitable-oils': ({ part, oils, chosen }, say) =>
    `Varios aceites en existencias cumplen el manual (${writePart(part)}): ${say.list(oils)}. Este plan usa ${chosen}; anotar el aceite con que se llena.`,
  'service/oil-only-choice': ({ oil }) => `La hoja de datos permite ${oil} y ningún otro.`,
  'service/no-oil-for-ambient': ({ part, ambient }, say) =>
    `La hoja de datos no permite ningún aceite a ${say.quantity(ambient)} (${writePart(part)}).`,
  'service/oil-does-not-meet': ({ container, oil, reason }, say) =>
    `${quote(container)} no es ${oil}. ${say.reason(reason)}`,
  'service/ask-oil-maker': ({ container, oil, reason }, say) =>
    `Preguntar al fabricante del aceite si ${quote(container)} puede sustituir a ${oil}. ${say.reason(reason)}`,
  'service/no-suitable-oil': ({ part, oil, offered, reasons }, say) =>
    [
      `${startWithPart(part)}: no hay aceite adecuado en existencias. Se exige ${oil}; en existencias hay ${say.list(offered)}.`,
      ...reasons.map((reason) => say.reason(reason)),
    ].join(' '),
  'service/no-wrench-fits': ({ part, reasons }, say) =>
    [
      `${startWithPart(part)}: ninguna llave de la caja de herramientas se puede ajustar.`,
      ...reasons.map((reason) => say.reason(reason)),
    ].join(' '),
  'service/wrench-required': ({ from, to, count }, say) =>
    `Conseguir una llave dinamométrica de ${say.quantity({ kind: 'limits', min: String(from.value), max: String(to.value), unit: to.unit })}, para ${say.count(count, 'apriete', 'aprietes')}.`,
  'service/calibration-expired': ({ wrench, dueOn }, say) =>
    `${quote(wrench)}: la calibración caducó el ${say.date(dueOn)}. Hacerla calibrar antes de usarla.`,
  'service/calibration-cycles-used-up': ({ wrench, cycles, limit }, say) =>
    `${quote(wrench)}: ${say.count(cycles, 'ciclo', 'ciclos')} desde su calibración (límite ${say.number(limit)}). Hacerla calibrar.`,
  'service/scale-reversed': ({ wrench, lowest, highest }, say) =>
    `Escala de ${quote(wrench)}: la marca más baja, ${say.quantity(lowest)}, supera la más alta, ${say.quantity(highest)}. La llave no se usa; corregir la caja de herramientas.`,
  'service/calibration-not-recorded': ({ wrench }) =>
    `La caja de herramientas no da la última calibración de ${quote(wrench)}.`,
  'service/socket-found': ({ tool, size }) =>
    size === '' ? `${capitalize(tool)}.` : `${capitalize(tool)}: sirve para ${size}.`,
  'service/adaptor-between': ({ adaptor, wrenches }, say) =>
    `Poner ${quote(adaptor)} entre el vaso y ${say.list(wrenches.map(quote))}. Va en línea, así que el ajuste no cambia.`,
  'service/socket-missing': ({ part, drive, size }) =>
    `La caja de herramientas no tiene herramienta para ${nameOf(cardWords.drives, drive)}${size === '' ? '' : ` ${size}`} (${writePart(part)}).`,
  'service/turned-by-hand': ({ part }) => `A mano (${writePart(part)}).`,
  'service/drive-not-stated': ({ part }) =>
    `La hoja de datos no indica la medida de la llave (${writePart(part)}). Averiguarla antes de salir.`,
  'service/vessel-too-coarse': ({ vessel, part, reason }, say) =>
    `${quote(vessel)}: exactitud insuficiente (${writePart(part)}). ${say.reason(reason)}`,
  'service/no-vessel': ({ part }) => `La caja de herramientas no tiene jarra graduada (${writePart(part)}).`,
  'service/pan-too-small': ({ pan, size, volume }, say) =>
    `${quote(pan)} (${say.quantity(size)}): demasiado poco para los ${say.quantity(volume)} de este servicio. Traer una mayor, o vaciarla entre drenajes.`,
  'service/no-pan': ({ volume }, say) =>
    `La caja de herramientas no tiene bandeja de drenaje; en este servicio se drenan ${say.quantity(volume)}.`,
  'service/stands-too-few': ({ have, need }, say) =>
    `Caballetes necesarios: ${say.number(need)}; en la caja de herramientas: ${say.number(have)}.`,
  'service/stands-too-weak': ({ stands, rating, mass }, say) =>
    `${quote(stands)}: carga de ${say.quantity(rating)} por unidad; la máquina pesa ${say.quantity(mass)}. No usarlos.`,
  'service/stands-strong-enough': ({ stands, rating, mass }, say) =>
    `${quote(stands)}: carga de ${say.quantity(rating)} por unidad; la máquina entera pesa ${say.quantity(mass)}.`,
  'service/stands-missing': ({ need }, say) =>
    `Caballetes necesarios: ${say.number(need)}; ninguno en la caja de herramientas. Nunca confiar solo en un gato.`,
  'service/ramps-too-few': ({ have, need }, say) =>
    `Rampas necesarias: ${say.number(need)}; en la caja de herramientas: ${say.number(have)}.`,
  'service/ramps-too-weak': ({ ramps, rating, mass }, say) =>
    `${quote(ramps)}: carga de ${say.quantity(rating)} por unidad; la máquina pesa ${say.quantity(mass)}. No usarlas.`,
  'service/ramps-strong-enough': ({ ramps, rating, mass }, say) =>
    `${quote(ramps)}: carga de ${say.quantity(rating)} por unidad; la máquina entera pesa ${say.quantity(mass)}.`,
  'service/ramps-missing': ({ need }, say) =>
    `Rampas necesarias: ${say.number(need)}; ninguna en la caja de herramientas.`,
  'service/mass-not-stated': () =>
    'La hoja de datos no indica la masa de la máquina: comparar la carga de los caballetes o rampas con su placa.',
  'service/seal-every-opening': ({ count }, say) =>
    `${say.count(count, 'nueva', 'nuevas')}: cambiar en cada apertura.`,
  'service/seal-replace-not-stated': ({ count }, say) =>
    `${say.count(count, 'nueva', 'nuevas')}: el manual no dice cuándo cambiarla.`,
  'service/access-not-stated': ({ part }) =>
    `${startWithPart(part)}: acceso sin indicar. Ver el manual. Si hay que elevar la máquina, usar los puntos de elevación del manual y caballetes de carga suficiente. Nunca trabajar bajo una máquina que solo sostiene un gato.`,
  'service/seal-on-condition': ({ count }, say) =>
    `Inspeccionarla y volver a usarla solo si está en buen estado; tener ${say.count(count, 'repuesto preparado', 'repuestos preparados')}.`,
  'service/seal-not-known': ({ part }) => `No se conoce la junta (${writePart(part)}). Ver el manual.`,
  'service/pour-through': ({ filler, oil, temperature }, say) =>
    `${capitalize(oil)} a ${say.quantity(temperature)} por ${quote(filler)}.`,
  'service/hose-bore-not-known': ({ filler }) =>
    `No se conoce el diámetro interior de la manguera (${filler}), así que no se calcula el tiempo de vertido. La manguera está vacía cuando no gotea.`,
  'service/usual-hoses': ({ from, to, fastest, slowest }, say) =>
    `Aprox. ${say.number(Number(fastest.value))} a ${say.quantity(slowest)} con mangueras usuales (diámetro interior ${say.number(Number(from.value))} a ${say.quantity(to)}).`,
  'service/warm-the-bottle': ({ temperature }, say) =>
    `A ${say.quantity(temperature)} el aceite es espeso: guardar la botella en interior antes del servicio, o ponerla, con la tapa puesta, en agua tibia. Nunca calentarla con llama.`,
  'service/no-filler': ({ part }) =>
    `La caja de herramientas no tiene embudo con manguera (${writePart(part)}).`,
  'service/no-oil-to-pour': ({ part }) =>
    `No se conoce el aceite, así que no se calcula el tiempo de vertido (${writePart(part)}).`,
  'service/pour-volume-not-known': ({ part }) =>
    `No se conoce la cantidad, así que no se calcula el tiempo de vertido (${writePart(part)}).`,
  'service/drain-until-drips': () => 'Drenar hasta que solo gotee.',
  'service/settle-stated': ({ minutes }, say) =>
    `La hoja de datos da un tiempo de reposo de ${say.quantity(minutes)}.`,
  'service/settle-not-stated': () => 'La hoja de datos no indica tiempo de reposo. Ver el manual.',
  'service/cure-stated': ({ product, time }, say) =>
    `${quote(product)}: dejar curar ${say.quantity(time)} antes de que lo toque el aceite.`,
  'service/cure-not-stated': ({ product }) =>
    `La hoja de datos no indica el tiempo de curado de ${quote(product)}. Ver el manual y la etiqueta.`,
  'service/reading-stale': ({ meter, date, days, staleAfter }, say) =>
    `La última lectura ${withDe(writeMeter(meter))} tiene ${say.count(days, 'día', 'días')} (${say.date(date)}; límite ${say.count(staleAfter, 'día', 'días')}). Volver a leer el contador antes de confiar en “${cardWords.dueStates['not due']}”.`,
  'service/time-sum': ({ steps, minutes, waitMinutes }, say) =>
    `${say.count(steps, 'paso', 'pasos')}: ${say.count(minutes, 'minuto', 'minutos')} de trabajo y ${say.count(waitMinutes, 'minuto', 'minutos')} de espera (estimación propia).`,
  'service/time-from-records': ({ count, min, max, estimate }, say) =>
    `Mediana de ${say.count(count, 'servicio', 'servicios')} con el mismo trabajo, ${say.number(min)} a ${say.number(max)} min; la estimación propia es ${say.number(estimate)} min.`,
  'service/time-few-visits': ({ count, required }, say) =>
    `${say.count(count, 'servicio registrado', 'servicios registrados')} con el mismo trabajo; a partir de ${say.number(required)}, su mediana sustituye a la estimación.`,
  'service/labour': ({ rate, cost }, say) =>
    `Mano de obra: ${say.number(cost.amount)} ${cost.currency}, a ${say.number(rate.amount)} ${rate.currency} por hora.`,
  'service/waiting-time-not-known': ({ count }, say) =>
    count === 1
      ? `No se incluye ${say.count(count, 'espera', 'esperas')} de duración desconocida.`
      : `No se incluyen ${say.count(count, 'espera', 'esperas')} de duración desconocida.`,
  'service/only-if-low': () => 'Solo si el nivel está bajo',
  'service/only-on-some-machines': ({ variants, modelYears, serials, market }) => {
    const prefix = serials?.prefix ?? ''
    const facts = [
      variants && join(variants, 'o'),
      modelYears && `años de modelo ${writeRange(modelYears.from, modelYears.to)}`,
      serials && `números de serie ${writeRange(serials.from, serials.to, prefix)}`,
      market && `mercado ${join(market, 'o')}`,
    ]
    return `Solo en ${join(
      facts.filter((fact) => fact !== undefined),
      'y',
    )}`
  },
  'service/supply': ({ supply }) => `${capitalize(nameOf(SUPPLY_NAMES, supply))}.`,
  'service/sample-label': ({ machine, part, date, hours, oil, hoursOnOil }, say) =>
    `Etiqueta de la muestra: ${[
      machine,
      writePart(part),
      date,
      hours && say.quantity(hours),
      oil ?? 'aceite desconocido',
      hoursOnOil === undefined
        ? 'horas con el aceite desconocidas'
        : `${say.quantity(hoursOnOil)} con el aceite`,
    ]
      .filter(Boolean)
      .join(', ')}; botella número ____.`,
  'service/hand-tools': ({ tools }, say) =>
    `Herramientas de mano: ${say.list(tools.map((tool) => nameOf(TOOL_NAMES, tool)))}.`,
  'service/used-oil': ({ volume }, say) =>
    `Traer un recipiente cerrado, con letrero, para un máximo de ${say.quantity(volume)} de aceite usado.`,
  'service/drain-limit-from-dry-fill': ({ part, volume }, say) =>
    `La hoja de datos no indica el llenado; puede drenarse hasta el llenado en seco de ${say.quantity(volume)} (${writePart(part)}).`,
  'service/used-oil-not-known': ({ part }) =>
    `No se conoce la cantidad de aceite usado (${writePart(part)}).`,
  'service/manual-first': () =>
    'El manual de la máquina y las normas locales tienen prioridad sobre esta ficha.',
  'service/licensed-work': () => 'Los trabajos que exigen licencia son solo para quien la tiene.',
  'service/record-not-counted': ({ date, reason }, say) =>
    `El registro del ${say.date(date)} no cuenta. ${say.reason(reason)}`,
  'service/not-to-be-used': ({ signal, date, fault }, say) =>
    `${SIGNAL_WORDS[signal]}: No usar esta máquina. Hay una avería pendiente desde el ${say.date(date)}. ${say.reason(fault)}`,
  'service/no-oil-added': ({ part, since }, say) =>
    `${startWithPart(part)}: sin aceite repuesto desde el ${say.date(since)}.`,
  'service/oil-start-not-known': ({ part }) =>
    `No consta ningún cambio de aceite ni el día del primer uso (${writePart(part)}): anotarlos para ver con qué rapidez se pierde aceite.`,
  'service/oil-added': ({ part, added, count, since, days, hours, per100Hours, percentOfFill }, say) => {
    const topUpsText = count === 1 ? '' : ` en ${say.number(count)} veces`
    const durationText = hours
      ? `, ${writeAmount(hours, say)}`
      : days === undefined
        ? ''
        : `, ${say.count(days, 'día', 'días')}`
    const startText = since === undefined ? '' : ` desde el ${say.date(since)}`
    const rateText = per100Hours ? `, ${writeAmount(per100Hours, say, 'aprox. ')} por cada 100 h` : ''
    const shareText = percentOfFill === undefined ? '' : `, ${say.number(percentOfFill, 0)} % del llenado`
    return `${startWithPart(part)}: ${say.quantity(added)} repuestos${topUpsText}${startText}${durationText}${rateText}${shareText}.`
  },
  'service/top-up-instance-missing': ({ part }) =>
    `Las reposiciones no nombran la unidad (${writePart(part)}): buscar fugas en cada una.`,
  'service/oil-may-have-settled': () =>
    'Una cantidad pequeña poco después de un cambio de aceite: puede que el aceite se haya asentado. Volver a comprobar el nivel tras 10 h.',
  'service/look-for-leaks': () =>
    'Una caja cerrada no consume aceite. Buscar fugas y volver a comprobar el nivel tras 10 h.',
  'service/find-the-leak': () => 'Encontrar la fuga antes de reponer aceite.',
  'service/loses-oil': ({ signal, reasons }, say) =>
    `${SIGNAL_WORDS[signal]}: ${reasons.map((reason) => say.reason(reason)).join(' ')}`,
  'service/used-oil-rules': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Llevar el aceite usado a un punto de recogida, en un recipiente en buen estado, cerrado y con el letrero de aceite usado.`,
  'service/wrong-sheet': ({ required, revision, given, givenRevision }) =>
    `Se esperaba la hoja ${required}, revisión ${revision}; se encontró ${given}, revisión ${givenRevision}.`,
  'service/service-not-on-sheet': ({ service, known }, say) =>
    `La hoja de datos no tiene el servicio ${service}; tiene ${say.list(known)}.`,
  'service/procedure-errors': ({ count, signal }, say) =>
    `${SIGNAL_WORDS[signal]}: Los pasos de esta ficha vienen de un procedimiento ajeno con ${say.count(count, 'error', 'errores')}, que figuran en “${cardWords.labels.findings}”. No seguirlos hasta corregirlos.`,
  'service/procedure-of-other-services': ({ services, asked }, say) =>
    `El procedimiento es para ${say.list(services)}, no para ${say.list(asked)}. Elegir sus servicios, u otro procedimiento.`,
  'service/service-not-on-machine': ({ service }) =>
    `${quote(service)} no se aplica a esta máquina (por su variante, número de serie, año de modelo y mercado). Elegir otro servicio.`,
}
