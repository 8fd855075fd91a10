import type { StepTexts } from '../catalogue.js'
import {
  takeOffCoverText,
  WHEEL_MARKS,
  WHEEL_WORDS,
  writeBoltOrder,
  writeCoverTightening,
  writeFluid,
  writeHole,
  writeLevel,
  writeOfPart,
  writePart,
  writeSeal,
  writeShortConditions,
  writeShortPart,
  writeShortTightening,
  writeStuckWasher,
  writeTightening,
  writeTopUp,
} from './stepPhrases.js'
import { quote } from './words.js'

/** At chips, flakes or pieces the machine stays out of use. */
const stopAtChipsText =
  'Si hay virutas, escamas o trozos, parar: cerrar la caja. No llenar. Señalizar la máquina como fuera de servicio.'
const goOnAtPasteText = 'Si en un primer servicio solo hay pasta gris o algo de brillo metálico, seguir.'

/** The steps in Spanish: short, in the infinitive, one instruction a sentence. */
export const stepTexts: StepTexts = {
  'find the variant': {
    full: () =>
      'Averiguar qué variante es esta máquina: mirar la placa y las piezas. Omitir los pasos y datos de otras variantes.',
    short: () => 'Averiguar primero la variante',
    show: () => 'La placa de la máquina, en primer plano.',
  },
  'read the manual': {
    full: () => 'Leer primero el manual de la máquina. Si esta ficha dice otra cosa, seguir el manual.',
    short: () => 'Primero el manual',
    show: () => 'El manual de la máquina, abierto por la página del servicio.',
  },
  'wear protection': {
    full: () => 'Ponerse guantes y protección ocular.',
    short: () => 'Guantes, protección ocular',
    show: () => 'Las manos con guantes y la protección ocular.',
  },
  'park on level ground': {
    full: () => 'Estacionar la máquina en suelo llano y firme.',
    short: () => 'Estacionar en llano',
    show: () => 'La máquina entera de lado, nivelada en suelo firme.',
  },
  'carry to level ground': {
    full: () =>
      'No arrancar ni remolcar la máquina. Sacarla empujando o con cabrestante. Transportarla a suelo llano y firme. Poner el freno de estacionamiento. Sacar la llave de contacto.',
    short: () =>
      'No arrancar ni remolcar: sacar con cabrestante, transportar a suelo llano, freno puesto, llave de contacto fuera',
    show: () => 'La máquina sobre un remolque, con el motor parado.',
  },
  'warm the oil': {
    full: ({ temperature }) =>
      temperature === undefined
        ? 'Poner la máquina en marcha hasta que el aceite esté tibio, no caliente.'
        : `Poner la máquina en marcha hasta que el aceite esté tibio, no caliente. El manual indica ${temperature}.`,
    short: () => 'Aceite tibio, no caliente',
    show: () => 'La máquina en un recorrido corto.',
  },
  'stop the engine': {
    full: () =>
      'Bajar los implementos al suelo. Poner el freno de estacionamiento. Parar el motor. Sacar la llave de contacto. Esperar a que nada gire.',
    short: () => 'Implementos abajo, freno puesto, motor parado, llave de contacto fuera',
    show: () => 'Una mano que saca la llave de contacto.',
  },
  'chock the wheels': {
    full: ({ part }) =>
      part === undefined
        ? 'Calzar por ambos lados cada rueda u oruga que queda en el suelo.'
        : `Calzar por ambos lados cada rueda de ${quote(part)}.`,
    short: ({ part }) => `Calzar por ambos lados: ${part ?? 'cada rueda u oruga en el suelo'}`,
    show: () => 'Los calzos, bien ajustados a ambos lados de cada rueda.',
  },
  'secure the machine': {
    full: ({ part, how }) =>
      `Asegurar ${part === undefined ? 'lo que indica el manual' : quote(part)}: ${how ?? 'ver el manual'}.`,
    short: ({ part, how }) => `${part ?? 'Asegurar'}: ${how ?? 'ver el manual'}`,
    show: ({ part }) => `Asegurado: ${part === undefined ? 'todo' : quote(part)}.`,
  },
  'raise the machine': {
    full: ({ part, jack }) =>
      jack !== undefined
        ? `Elevar la máquina con el gato (${jack}). No trabajar bajo un gato.`
        : `Elevar la máquina${part === undefined ? '' : ` para los caballetes (${part})`}. Buscar en el manual el punto de apoyo del gato: no se indica aquí. No trabajar bajo un gato.`,
    short: ({ part, jack }) =>
      jack !== undefined
        ? `Gato: ${jack}`
        : `Elevar${part === undefined ? '' : ` para los caballetes (${part})`} (punto de apoyo del gato: ver el manual)`,
    show: () => 'El gato en su punto de apoyo; luego la rueda que se separa del suelo.',
  },
  'set on stands': {
    full: ({ part }) =>
      `Poner la máquina sobre caballetes de carga suficiente${part === undefined ? '' : ` (${part})`}. Comprobar que está firme.`,
    short: ({ part }) => `Caballetes${part === undefined ? '' : `: ${part}`}`,
    show: () => 'Los caballetes en sus puntos de apoyo y el gato bajado.',
  },
  'lower the machine': {
    full: () =>
      'Comprobar que no hay personas ni herramientas bajo la máquina. Levantarla de los caballetes. Retirar los caballetes. Bajarla despacio hasta el suelo.',
    short: () => 'Despejar debajo; levantar, retirar los caballetes, bajar la máquina',
    show: () => 'Las ruedas al tocar el suelo.',
  },
  'drive onto ramps': {
    full: ({ part }) =>
      `Poner rampas de carga suficiente rectas y pegadas delante de ${part === undefined ? 'todas las ruedas' : `las ruedas de ${quote(part)}`}. Una persona guía desde un lado. Subir despacio en la marcha más corta. Parar con cada rueda contra el tope de su rampa.`,
    short: ({ part }) => `Rampas, ${part ?? 'todas las ruedas'}: subir despacio, con guía, hasta los topes`,
    show: () => 'Las ruedas al subir, la persona que guía y las ruedas contra los topes.',
  },
  'drive off ramps': {
    full: () =>
      'Comprobar que no hay personas, herramientas ni bandejas bajo la máquina. Una persona guía desde un lado. Soltar el freno. Bajar despacio, por el mismo camino. Retirar las rampas.',
    short: () => 'Despejar debajo; bajar de las rampas despacio, con guía',
    show: () => 'Las ruedas al bajar hasta el suelo.',
  },
  'remove shield': {
    full: (params) => `Quitar ${writePart(params, 'el protector')}. Guardar juntas sus fijaciones.`,
    short: (params) => `${writeShortPart(params, 'protector')}: quitar`,
    show: (params) => `${writePart(params, 'el protector')} al quitarse, y sus fijaciones.`,
  },
  'refit shield': {
    full: (params) =>
      `Volver a montar ${writePart(params, 'el protector')} con todas sus fijaciones. ${writeTightening(params, 'las fijaciones')}`,
    short: (params) =>
      `${writeShortPart(params, 'protector')}: montar. ${writeShortTightening(params, 'fijaciones')}`,
    show: (params) => `${writePart(params, 'el protector')} al montarse de nuevo.`,
  },
  'turn the wheel': {
    full: (params) =>
      params.wheelMark === undefined
        ? `Girar la rueda como indica el manual para ${writePart(params, 'la abertura')}.`
        : `Girar la rueda${params.instance === undefined ? '' : ` (${params.instance})`}${params.gearcase === undefined ? '' : ` de ${quote(params.gearcase)}`} hasta que su marca esté ${WHEEL_WORDS[params.wheelMark]}. Si la retiene un freno o una marcha, soltarlo como dice el manual, con el otro eje calzado.`,
    short: (params) =>
      `Girar la rueda${params.instance === undefined ? '' : ` (${params.instance})`}: ${params.wheelMark === undefined ? 'como indica el manual' : WHEEL_MARKS[params.wheelMark]}; si la retiene un freno o una marcha, ver el manual`,
    show: () => 'La marca de la rueda, hasta que llega a su posición.',
  },
  'roll the machine': {
    full: (params) =>
      `Soltar el freno. Mover la máquina despacio. Parar cuando la marca para ${writePart(params, 'el tapón')} esté ${params.wheelMark === undefined ? 'como indica el manual' : WHEEL_WORDS[params.wheelMark]}. Poner el freno.`,
    short: (params) =>
      `Mover la máquina${params.instance === undefined ? '' : ` (${params.instance})`}: ${params.wheelMark === undefined ? 'como indica el manual' : WHEEL_MARKS[params.wheelMark]}`,
    show: () => 'La marca de la rueda mientras la máquina rueda, y la persona al freno.',
  },
  'clean around': {
    full: (params) => `Limpiar la zona alrededor ${writeOfPart(params, 'la abertura')}.`,
    short: (params) => `${writeShortPart(params, 'abertura')}: limpiar alrededor`,
    show: (params) => `${writePart(params, 'la abertura')}: antes con suciedad, luego sin ella.`,
  },
  'crack loose': {
    full: (params) => {
      const action =
        params.drive === 'hand'
          ? `Desenroscar ${writePart(params, 'el tapón')} una vuelta a mano.`
          : `Aflojar ${writePart(params, 'el tapón')}.`
      return params.beforeDraining === true
        ? `${action} Si no cede, dejar dentro ${writeFluid(params)}.`
        : action
    },
    short: (params) =>
      params.drive === 'hand'
        ? `${writeShortPart(params, 'tapón')}: desenroscar`
        : `${writeShortPart(params, 'tapón')}: aflojar${params.beforeDraining === true ? `; si no cede, dejar dentro ${writeFluid(params)}` : ''}`,
    show: (params) =>
      `${params.drive === 'hand' ? 'Una mano' : 'La barra'} en ${writePart(params, 'el tapón')}, y el primer giro pequeño.`,
  },
  'nip by hand': {
    full: (params) => `Volver a enroscar ${writePart(params, 'el tapón')} a mano.`,
    short: (params) => `${writeShortPart(params, 'tapón')}: enroscar a mano`,
    show: (params) => `Los dedos en ${writePart(params, 'el tapón')}.`,
  },
  'place the pan': {
    full: (params) =>
      params.filter === undefined
        ? `Poner la bandeja de drenaje debajo ${writeOfPart(params, 'la abertura de drenaje')}.`
        : `Poner una bandeja debajo ${writeOfPart(params, 'el filtro')}. Dejar otra debajo del drenaje abierto.`,
    short: () => 'Bandeja en su sitio',
    show: (params) => `La bandeja, centrada debajo ${writeOfPart(params, 'la abertura de drenaje')}.`,
  },
  'take out': {
    full: (params) => `Retirar ${writePart(params, 'el tapón')}.`,
    short: (params) => `${writeShortPart(params, 'tapón')}: retirar`,
    show: (params) => `${writePart(params, 'el tapón')} al salir.`,
  },
  'take an oil sample': {
    full: (params) =>
      `Dejar salir el primer aceite por ${writePart(params, 'la abertura de drenaje')}. Mantener la botella limpia en el centro del chorro. Llenar tres cuartos y cerrar enseguida. Poner la etiqueta. No llenar desde la bandeja.`,
    short: () =>
      'Muestra de aceite: dejar pasar el primero; botella a mitad del chorro, cerrada, con etiqueta',
    show: () => 'La botella en el centro del chorro; luego su tapa y su etiqueta.',
  },
  'let drain': {
    full: ({ wait, fluid }) =>
      fluid === 'grease'
        ? 'Dejar salir la grasa. Rascar el resto.'
        : wait === undefined
          ? 'Dejar drenar el aceite hasta que solo gotee.'
          : `Dejar drenar el aceite hasta que solo gotee. Esperar al menos ${wait}.`,
    short: ({ wait, fluid }) =>
      fluid === 'grease'
        ? 'Sacar la grasa: rascar el resto'
        : `Drenar hasta que solo gotee${wait === undefined ? '' : ` (al menos ${wait})`}`,
    show: () => 'El chorro de aceite, hasta que solo gotea.',
  },
  'suck out the oil': {
    full: (params) => `Extraer el aceite por ${writePart(params, 'la abertura')}.`,
    short: (params) => `${writeShortPart(params, 'abertura')}: extraer el aceite`,
    show: (params) => `La manguera de aspiración en ${writePart(params, 'la abertura')}.`,
  },
  'take off cover': {
    full: takeOffCoverText,
    short: (params) =>
      params.cover?.carriesBearings === true
        ? `${writeShortPart(params, 'tapa')}: quitar solo según el manual`
        : `${writeShortPart(params, 'tapa')}: despegar, luego quitar`,
    show: (params) => `${writePart(params, 'la tapa')} al separarse, y el aceite que sale.`,
  },
  'inspect the oil': {
    full: ({ fluid }) =>
      fluid === 'grease'
        ? 'Inspeccionar la grasa vieja con buena luz. Si hay virutas, escamas o trozos, parar: no llenar. Señalizar la máquina como fuera de servicio. Si está lechosa, parar: buscar por dónde entró el agua. Limpiarla toda.'
        : `Inspeccionar el aceite viejo con buena luz. ${stopAtChipsText} ${goOnAtPasteText} Si está lechoso, parar: buscar por dónde entró el agua. Enjuagar la caja que tuvo aceite lechoso antes de llenarla. Llenarla con el aceite del manual. Poner la máquina en marcha un momento. Dejar enfriar. Drenar el aceite.`,
    short: () =>
      'Aceite: con virutas o trozos, parar, cerrar, fuera de servicio; si está lechoso, buscar el agua y enjuagar',
    show: () => 'El aceite viejo en la bandeja, con buena luz.',
  },
  'inspect the magnet': {
    full: (params) =>
      `Inspeccionar el imán ${writeOfPart(params, 'el tapón')}. ${stopAtChipsText} ${goOnAtPasteText}`,
    short: () => 'Imán: con virutas o trozos, parar, cerrar, fuera de servicio',
    show: () => 'El imán, en primer plano.',
  },
  'clean the magnet': {
    full: () => 'Limpiar el imán.',
    short: () => 'Limpiar el imán',
    show: () => 'El imán limpio.',
  },
  'take off filter': {
    full: (params) =>
      params.filter?.screwed === true
        ? `Desenroscar ${writePart(params, 'el filtro')} despacio. Dejar caer su aceite en la bandeja. Comprobar que sale también el anillo viejo.`
        : `Sacar ${writePart(params, 'el filtro')}. Dejar caer su aceite en la bandeja.`,
    short: (params) => `${writeShortPart(params, 'filtro')}: sacar`,
    show: (params) => `${writePart(params, 'el filtro')} al salir, sobre la bandeja.`,
  },
  'inspect the filter': {
    full: (params) =>
      `Buscar metal en ${writePart(params, 'el filtro')}. ${stopAtChipsText} ${goOnAtPasteText}`,
    short: (params) =>
      `${writeShortPart(params, 'filtro')}: con virutas o trozos, parar, cerrar, fuera de servicio`,
    show: (params) => `El interior ${writeOfPart(params, 'el filtro')}, en primer plano.`,
  },
  'clean the filter': {
    full: (params) =>
      `Limpiar ${writePart(params, 'el colador')} con disolvente. Dejar secar. Con roturas o abolladuras, cambiar la pieza.`,
    short: (params) => `${writeShortPart(params, 'colador')}: limpiar`,
    show: (params) => `${writePart(params, 'el colador')}, sin suciedad, a contraluz.`,
  },
  'fit filter': {
    full: (params) => {
      const isClean = params.filter?.renewed === false
      const filterText = writePart(params, 'el filtro')
      if (params.filter?.screwed !== true)
        return isClean
          ? `Volver a poner ${filterText}. Comprobar que asienta.`
          : `Poner una pieza nueva: ${filterText}. Comprobar que asienta.`
      return isClean
        ? `Untar con aceite nuevo el anillo ${writeOfPart(params, 'el filtro')}. Enroscar a mano hasta que el anillo toque.`
        : `Tomar una pieza nueva: ${filterText}. Untar su anillo con aceite nuevo. Enroscar a mano hasta que el anillo toque.`
    },
    short: (params) => {
      const state = params.filter?.renewed === false ? 'limpiar y poner' : 'poner una pieza nueva'
      const filterText = `${writeShortPart(params, 'filtro')}: ${state}`
      return params.filter?.screwed === true
        ? `${filterText}, aceitar el anillo, enroscar a mano`
        : filterText
    },
    show: (params) => `${writePart(params, 'el filtro')} al montarse.`,
  },
  'tighten filter': {
    full: (params) =>
      params.turns === undefined
        ? writeTightening(params, writePart(params, 'el filtro'))
        : `Apretar ${writePart(params, 'el filtro')} por vueltas. Vueltas desde que toca el anillo: ${params.turns}.`,
    short: (params) =>
      params.turns === undefined
        ? writeShortTightening(params, writeShortPart(params, 'filtro'))
        : `${writeShortPart(params, 'filtro')}: vueltas desde el contacto: ${params.turns}`,
    show: (params) => `Las dos manos en ${writePart(params, 'el filtro')}.`,
  },
  'clear the breather': {
    full: ({ place }) => `Comprobar que el respiradero está libre${place === undefined ? '' : `: ${place}`}.`,
    short: () => 'Respiradero libre',
    show: () => 'El respiradero.',
  },
  'take off old seal': {
    full: (params) =>
      params.seal === 'thread sealant'
        ? 'Limpiar el sellador viejo de las dos roscas.'
        : params.seal === 'liquid gasket'
          ? 'Rascar el sellador viejo de las dos caras. No dejar caer nada en la caja.'
          : params.cover !== undefined
            ? `Quitar ${writeSeal(params, 'old')}. No dejar restos en ninguna de las dos caras.`
            : `Quitar ${writeSeal(params, 'old')}. No dejar restos en la caja.${writeStuckWasher(params)}`,
    short: (params) =>
      params.seal === 'thread sealant' ? 'Limpiar las dos roscas' : `Quitar ${writeSeal(params, 'oldShort')}`,
    show: (params) =>
      params.seal === 'thread sealant'
        ? 'Las dos roscas, limpias.'
        : `${writeSeal(params, 'old')}, y la cara desnuda debajo.`,
  },
  'wipe the seal face': {
    full: (params) =>
      params.filter?.screwed === true
        ? `Limpiar la cara donde asienta ${writePart(params, 'el filtro')}. Comprobar que no queda pegado un anillo viejo.`
        : params.cover === undefined
          ? `Limpiar ${writePart(params, 'el tapón')} y su asiento.`
          : `Limpiar y secar las dos caras de sellado en ${writePart(params, 'la tapa')}.`,
    short: (params) =>
      `${writeShortPart(params, 'tapón')}: limpiar${params.cover === undefined ? ', también el asiento' : ' la cara'}`,
    show: (params) => `El asiento ${writeOfPart(params, 'el tapón')}, limpio.`,
  },
  'fit new seal': {
    full: (params) => `Montar ${writeSeal(params, 'new')} en ${writePart(params, 'la abertura')}.`,
    short: (params) => `${writeSeal(params, 'newShort')}: ${writeShortPart(params, 'abertura')}`,
    show: (params) => `${writeSeal(params, 'new')} al montarse.`,
  },
  'inspect the seal': {
    full: (params) =>
      `Buscar cortes y aplastamientos en ${writeSeal(params, 'definite')} ${writeOfPart(params, 'la abertura')}. Si hay alguno, cambiarla.`,
    short: (params) => `Inspeccionar ${writeSeal(params, 'definite')}: ${writeShortPart(params, 'abertura')}`,
    show: (params) => `${writeSeal(params, 'definite')}, girada despacio.`,
  },
  'apply sealant': {
    full: (params) => {
      const sealant = params.sealant === undefined ? 'el sellador' : quote(params.sealant)
      return params.cover !== undefined
        ? `Aplicar ${sealant} a la cara limpia ${writeOfPart(params, 'la tapa')}${params.bead === undefined ? '' : `, ${params.bead} de grueso`}. No dejar huecos en el cordón. Rodear por dentro cada agujero de tornillo.`
        : `Aplicar ${sealant} a la rosca limpia${params.part === undefined ? '' : ` ${writeOfPart(params, '')}`}.`
    },
    short: (params) =>
      `Sellador: ${writeShortPart(params, 'rosca')}${params.bead === undefined ? '' : `, cordón ${params.bead}`}`,
    show: (params) => `El sellador en ${writePart(params, 'la rosca')}.`,
  },
  fit: {
    full: (params) => `Enroscar ${writePart(params, 'el tapón')} hasta el apriete a mano.`,
    short: (params) => `${writeShortPart(params, 'tapón')}: enroscar a mano`,
    show: (params) => `${writePart(params, 'el tapón')} al enroscarse a mano.`,
  },
  tighten: {
    full: (params) => writeTightening(params, writePart(params, 'el tapón')),
    short: (params) => writeShortTightening(params, writeShortPart(params, 'tapón')),
    show: (params) => `La llave en ${writePart(params, 'el tapón')}: un tirón suave y el primer clic.`,
  },
  'fit cover': {
    full: (params) =>
      params.cover?.carriesBearings === true
        ? `Montar ${writePart(params, 'la tapa')} solo según el manual de la máquina: las láminas de ajuste fijan los rodamientos.`
        : `Poner ${writePart(params, 'la tapa')}. Enroscar a mano todos los tornillos.`,
    short: (params) => `${writeShortPart(params, 'tapa')}: poner, tornillos a mano`,
    show: (params) => `${writePart(params, 'la tapa')} al montarse, y los tornillos enroscados a mano.`,
  },
  'tighten cover': {
    full: writeCoverTightening,
    short: (params) => {
      const order = writeBoltOrder(params)
      return writeShortTightening(
        params,
        `${writeShortPart(params, 'tapa')}, tornillos${order === '' ? '' : ` (${order})`}`,
      )
    },
    show: (params) => `La llave en los tornillos ${writeOfPart(params, 'la tapa')}, en el orden correcto.`,
  },
  'wait for the cure': {
    full: ({ wait }) =>
      `Esperar ${wait ?? 'el tiempo que indica el fabricante del sellador'} a que cure el sellador. No echar aceite antes.`,
    short: ({ wait }) => `Curado antes del aceite${wait === undefined ? ': ver el sellador' : ''}`,
    show: () => 'Un reloj junto a la unión cerrada.',
  },
  'measure the oil': {
    full: ({ volume, oil, gap, totalVolume, fluid }) =>
      fluid === 'grease' && volume !== undefined
        ? `Medir ${volume} de ${oil ?? 'grasa correcta'}.`
        : volume === undefined
          ? `Medir la cantidad de llenado en una jarra limpia. La cantidad no se ${gap === 'cannot tell' ? 'sabe aquí' : 'indica'}: ver el manual.`
          : `Medir ${volume} de ${oil ?? 'aceite correcto'} en una jarra limpia.${totalVolume === undefined ? '' : ` Junto con el aditivo es la cantidad de llenado: ${totalVolume}.`}`,
    short: ({ volume, oil }) =>
      volume === undefined
        ? 'Medir la cantidad de llenado (ver el manual)'
        : `Medir: ${oil ?? 'aceite correcto'}`,
    show: () => 'La jarra a la altura de los ojos y el aceite en su marca.',
  },
  'add the additive': {
    full: ({ volume, oil, additive, additiveOrder }) =>
      additive === undefined && oil !== undefined
        ? `${oil} no necesita aditivo aquí: seguir con el paso siguiente.`
        : `Verter ${volume ?? 'la cantidad indicada'} de ${additive === undefined ? 'aditivo' : quote(additive)} por la abertura de llenado, ${additiveOrder === 'oil first' ? 'después' : 'antes'} del aceite.`,
    short: ({ oil, additive }) =>
      additive === undefined && oil !== undefined
        ? 'Con este aceite, sin aditivo'
        : `Echar el aditivo${additive === undefined ? '' : `: ${additive}`}`,
    show: () => 'El aditivo al entrar.',
  },
  'pour the oil': {
    full: (params) => {
      const { volume, level, additiveOrder, fluid } = params
      const through = `despacio por ${writeHole(params)}`
      if (fluid === 'grease')
        return `Introducir ${volume === undefined ? 'la grasa' : `los ${volume} de grasa`} ${through}.`
      // The last liquid poured can run out at a level hole: it must be oil, not additive.
      if (level?.method === 'to level hole' && additiveOrder === 'additive first')
        return `Verter aceite ${through} hasta el orificio de nivel${volume === undefined ? '' : `: cerca de ${volume}`}. No pasar de ahí.`
      return `Verter ${volume === undefined ? 'el aceite' : `${volume} de aceite`} ${through}.`
    },
    short: (params) =>
      `${params.fluid === 'grease' ? 'Introducir la grasa' : 'Verter'}: ${writeShortPart(params, 'abertura de llenado')}`,
    show: (params) => `La manguera en ${writeHole(params)}, y el aceite que baja en el embudo.`,
  },
  'wait for the hose': {
    full: ({ wait, usualWait, fluid }) =>
      fluid === 'grease'
        ? 'Dar tiempo a la grasa para bajar. Dejar salir el aire.'
        : wait === undefined
          ? `Esperar a que la manguera no gotee.${usualWait === undefined ? '' : ` ${usualWait}`}`
          : `Esperar a que la manguera no gotee: cerca de ${wait} desde que se empieza a verter.`,
    short: ({ fluid }) => (fluid === 'grease' ? 'Dejar bajar la grasa' : 'Manguera vacía cuando no gotee'),
    show: () => 'El extremo inferior de la manguera, hasta la última gota.',
  },
  'check the level': {
    full: writeLevel,
    short: (params) =>
      `Nivel: ${writeShortPart(params, 'abertura de nivel')}${writeShortConditions(params)}${params.below === undefined ? '' : `, ${params.below} bajo el borde`}`,
    show: (params) => `El aceite en ${writePart(params, 'la abertura de nivel')}, en primer plano.`,
  },
  'top up': {
    full: writeTopUp,
    short: ({ stopAt, level }) =>
      `Si está bajo, reponer, mismo aceite${stopAt === undefined || level?.afterFilling !== true ? '' : '; al máximo, parar'}`,
    show: () => 'Un poco de aceite y el nivel que sube.',
  },
  'clear away': {
    full: ({ how }) =>
      `Retirar la bandeja de drenaje, las herramientas y los calzos.${how === undefined ? '' : ` Soltar lo que se aseguró para el trabajo: ${how}.`} Comprobar que nadie está cerca de la máquina.`,
    short: ({ how }) =>
      `Fuera bandeja, herramientas, calzos y personas${how === undefined ? '' : `; soltar: ${how}`}`,
    show: () => 'El suelo despejado alrededor de la máquina.',
  },
  'short run': {
    full: () => 'Poner la máquina en marcha unos minutos.',
    short: () => 'Marcha corta',
    show: () => 'La máquina en un recorrido corto.',
  },
  'let settle': {
    full: ({ wait }) =>
      wait === undefined
        ? 'Dejar reposar el aceite el tiempo que indica el manual.'
        : `Dejar reposar el aceite ${wait}.`,
    short: ({ wait }) => `Dejar reposar${wait === undefined ? ' según el manual' : ''}`,
    show: () => 'La máquina, quieta en suelo llano.',
  },
  'let a leak show': {
    full: () =>
      'Dejar la máquina seca sobre los caballetes diez minutos. Una fuga necesita tiempo para verse.',
    short: () => 'Dejarla seca diez minutos',
    show: () => 'La caja seca y un reloj.',
  },
  'check for leaks': {
    full: ({ shield, instance }) =>
      `Buscar aceite en cada tapón y unión que se abrió${instance === undefined ? '' : ` (${instance})`}${shield === undefined ? '' : `, por los agujeros y los bordes de ${quote(shield)}`}. Si rezuma, cambiar la junta. No apretar más allá del valor del manual.`,
    short: ({ shield, instance }) =>
      `Buscar fugas${instance === undefined ? '' : ` (${instance})`}${shield === undefined ? '' : `, por ${quote(shield)}`}; si rezuma, junta nueva, no más par`,
    show: () => 'Cada tapón, seco, con una luz encima.',
  },
  'wipe down': {
    full: ({ instance }) =>
      `Limpiar todo el aceite derramado${instance === undefined ? '' : ` (${instance})`}.`,
    short: ({ instance }) => `Limpiar${instance === undefined ? '' : ` (${instance})`}`,
    show: () => 'La caja limpia.',
  },
  'take used oil away': {
    full: () =>
      'Poner el aceite usado en un bidón cerrado con el letrero “Aceite usado”. Llevarlo a un punto de recogida.',
    short: () => 'Aceite usado al bidón cerrado',
    show: () => 'El bidón con su letrero y la tapa al cerrarse.',
  },
  record: {
    full: () => 'Anotar lo que se hizo y lo que se halló.',
    short: () => 'Anotar',
    show: () => 'El registro completo.',
  },
}
