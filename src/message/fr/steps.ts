import type { StepTexts } from '../catalogue.js'
import {
  BOLT_ORDERS,
  takeOffCoverText,
  WHEEL_WORDS,
  writeAtPart,
  writeCoverTightening,
  writeFluid,
  writeHole,
  writeLevel,
  writeOfPart,
  writePart,
  writeShortConditions,
  writeShortPart,
  writeShortTightening,
  writeStuckWasher,
  writeTightening,
  writeTopUp,
} from './stepPhrases.js'
import { quote, writeNewSeal, writeOldSeal, writeTheSeal } from './words.js'

/** What to do with chips or paste, for oil, magnet and filter. */
const STOP_AT_CHIPS =
  'En présence de copeaux, paillettes ou morceaux, arrêter : refermer le carter. Ne pas remplir. Consigner la machine.'
const PASTE_IS_NORMAL =
  'S’il n’y a que de la pâte grise, ou quelques paillettes brillantes au premier entretien, continuer.'
export const STOP_AT_WATER =
  'Si l’huile est laiteuse, arrêter : chercher l’entrée d’eau. Rincer un carter qui contenait de l’huile laiteuse avant le remplissage. Le remplir avec l’huile du manuel. Faire tourner la machine brièvement. Laisser refroidir. Vidanger l’huile.'

/** The steps in French: short, infinitive, one instruction a sentence. */
export const stepTexts: StepTexts = {
  'find the variant': {
    full: () =>
      'Déterminer la variante de cette machine : regarder sa plaque et ses pièces. Omettre les étapes et valeurs des autres variantes.',
    short: () => 'Déterminer d’abord la variante',
    show: () => 'La plaque de la machine, en gros plan.',
  },
  'read the manual': {
    full: () => 'Lire d’abord le manuel de la machine. Si cette fiche en diffère, suivre le manuel.',
    short: () => 'Manuel d’abord',
    show: () => 'Le manuel de la machine, ouvert à la page de l’entretien.',
  },
  'wear protection': {
    full: () => 'Mettre des gants et une protection des yeux.',
    short: () => 'Gants, lunettes',
    show: () => 'Les mains gantées et la protection des yeux.',
  },
  'park on level ground': {
    full: () => 'Garer la machine sur un sol plat et ferme.',
    short: () => 'Garer à plat',
    show: () => 'La machine entière de côté, de niveau sur un sol ferme.',
  },
  'carry to level ground': {
    full: () =>
      'Ne pas démarrer ni remorquer la machine. La dégager en la poussant ou au treuil. La porter sur un sol plat et ferme. Serrer le frein de stationnement. Retirer la clé.',
    short: () => 'Ne pas démarrer ni remorquer : treuiller, porter sur sol plat, frein serré, clé retirée',
    show: () => 'La machine sur une remorque, moteur arrêté.',
  },
  'warm the oil': {
    full: ({ temperature }) =>
      temperature === undefined
        ? 'Faire tourner la machine jusqu’à ce que l’huile soit tiède, pas chaude.'
        : `Faire tourner la machine jusqu’à ce que l’huile soit tiède, pas chaude. Le manuel donne ${temperature}.`,
    short: () => 'Huile tiède, pas chaude',
    show: () => 'La machine sur un court trajet.',
  },
  'stop the engine': {
    full: () =>
      'Abaisser tout outil au sol. Serrer le frein de stationnement. Arrêter le moteur. Retirer la clé. Attendre que plus rien ne tourne.',
    short: () => 'Outils au sol, frein serré, moteur arrêté, clé retirée',
    show: () => 'Une main retire la clé.',
  },
  'chock the wheels': {
    full: ({ part }) =>
      part === undefined
        ? 'Caler des deux côtés chaque roue ou chenille qui reste au sol.'
        : `Caler des deux côtés chaque roue de ${quote(part)}.`,
    short: ({ part }) => `Caler des deux côtés : ${part ?? 'chaque roue ou chenille au sol'}`,
    show: () => 'Les cales, serrées contre les deux côtés de chaque roue.',
  },
  'secure the machine': {
    full: ({ part, how }) =>
      `Bloquer ${part === undefined ? 'ce que cite le manuel' : quote(part)} : ${how ?? 'voir le manuel'}.`,
    short: ({ part, how }) => `${part ?? 'Bloquer'} : ${how ?? 'voir le manuel'}`,
    show: ({ part }) => (part === undefined ? 'Tout est bloqué.' : `${quote(part)} : bloqué.`),
  },
  'raise the machine': {
    full: ({ part, jack }) =>
      jack !== undefined
        ? `Lever la machine au cric (${jack}). Ne pas travailler sous un cric.`
        : `Lever la machine${part === undefined ? '' : ` pour les chandelles (${part})`}. Chercher le point de levage dans le manuel : il n’est pas indiqué ici. Ne pas travailler sous un cric.`,
    short: ({ part, jack }) =>
      jack !== undefined
        ? `Cric : ${jack}`
        : `Lever${part === undefined ? '' : ` pour chandelles (${part})`} (point de levage : voir le manuel)`,
    show: () => 'Le cric à son point de levage, puis la roue qui quitte le sol.',
  },
  'set on stands': {
    full: ({ part }) =>
      `Poser la machine sur des chandelles prévues pour la charge${part === undefined ? '' : ` (${part})`}. S’assurer qu’elle est stable.`,
    short: ({ part }) => `Chandelles${part === undefined ? '' : ` : ${part}`}`,
    show: () => 'Les chandelles à leurs points d’appui et le cric abaissé.',
  },
  'lower the machine': {
    full: () =>
      'S’assurer qu’il n’y a ni personne ni outil sous la machine. La lever des chandelles. Retirer les chandelles. La descendre lentement au sol.',
    short: () => 'Rien dessous ; lever, retirer les chandelles, descendre la machine',
    show: () => 'Les roues qui touchent le sol.',
  },
  'drive onto ramps': {
    full: ({ part }) =>
      `Placer des rampes prévues pour la charge, droites, tout contre ${part === undefined ? 'chaque roue' : `les roues de ${quote(part)}`}. Se faire guider par une personne placée de côté. Monter lentement au rapport le plus court. S’arrêter avec chaque roue contre le bout de sa rampe.`,
    short: ({ part }) => `Rampes, ${part ?? 'chaque roue'} : monter lentement, avec guide, jusqu’aux butées`,
    show: () => 'Les roues qui montent, la personne qui guide et les roues contre les butées.',
  },
  'drive off ramps': {
    full: () =>
      'S’assurer qu’il n’y a ni personne, ni outil, ni bac sous la machine. Se faire guider par une personne placée de côté. Desserrer le frein. Redescendre lentement par le même chemin. Retirer les rampes.',
    short: () => 'Rien dessous ; descendre des rampes lentement, avec guide',
    show: () => 'Les roues qui redescendent au sol.',
  },
  'remove shield': {
    full: (params) => `Déposer ${writePart(params, 'protection')}. Garder les fixations ensemble.`,
    short: (params) => `${writeShortPart(params, 'protection')} : déposer`,
    show: (params) => `${writePart(params, 'protection')} au démontage, avec les fixations.`,
  },
  'refit shield': {
    full: (params) =>
      `Remonter ${writePart(params, 'protection')} avec toutes les fixations. ${writeTightening(params, 'les fixations')}`,
    short: (params) =>
      `${writeShortPart(params, 'protection')} : remonter. ${writeShortTightening(params, 'Fixations')}`,
    show: (params) => `${writePart(params, 'protection')} au remontage.`,
  },
  'turn the wheel': {
    full: (params) =>
      params.wheelMark === undefined
        ? `Tourner la roue comme le montre le manuel. Ouverture : ${writePart(params, 'ouverture')}.`
        : `Tourner la roue${params.instance === undefined ? '' : ` (${params.instance})`}${params.gearcase === undefined ? '' : ` de ${quote(params.gearcase)}`} jusqu’à ce que son repère soit ${WHEEL_WORDS[params.wheelMark]}. Si un frein ou un rapport la retient, le libérer selon le manuel, l’autre essieu étant calé.`,
    short: (params) =>
      `Tourner la roue${params.instance === undefined ? '' : ` (${params.instance})`} : ${writeMark(params.wheelMark)} ; si un frein ou un rapport la retient, voir le manuel`,
    show: () => 'Le repère sur la roue, jusqu’à sa position.',
  },
  'roll the machine': {
    full: (params) =>
      `Desserrer le frein. Déplacer lentement la machine. S’arrêter quand le repère ${writeOfPart(params, 'bouchon')} est ${params.wheelMark === undefined ? 'comme le montre le manuel' : WHEEL_WORDS[params.wheelMark]}. Serrer le frein.`,
    short: (params) =>
      `Déplacer la machine${params.instance === undefined ? '' : ` (${params.instance})`} : ${writeMark(params.wheelMark)}`,
    show: () => 'Le repère sur la roue pendant que la machine roule, et la personne au frein.',
  },
  'clean around': {
    full: (params) => `Nettoyer le pourtour ${writeOfPart(params, 'ouverture')}.`,
    short: (params) => `Nettoyer autour : ${writeShortPart(params, 'ouverture')}`,
    show: (params) => `${writePart(params, 'ouverture')}, sale puis propre.`,
  },
  'crack loose': {
    full: (params) =>
      `${params.drive === 'hand' ? `Dévisser ${writePart(params, 'bouchon')} d’un tour à la main.` : `Débloquer ${writePart(params, 'bouchon')}.`}${params.beforeDraining === true ? ` En cas de blocage, laisser ${writeFluid(params)} en place.` : ''}`,
    short: (params) =>
      params.drive === 'hand'
        ? `${writeShortPart(params, 'bouchon')} : dévisser`
        : `${writeShortPart(params, 'bouchon')} : débloquer${params.beforeDraining === true ? ` ; si bloqué, laisser ${writeFluid(params)}` : ''}`,
    show: (params) =>
      `${params.drive === 'hand' ? 'Une main' : 'La barre'} sur ${writePart(params, 'bouchon')}, et le premier petit tour.`,
  },
  'nip by hand': {
    full: (params) => `Revisser ${writePart(params, 'bouchon')} à la main.`,
    short: (params) => `${writeShortPart(params, 'bouchon')} : revisser à la main`,
    show: (params) => `Les doigts sur ${writePart(params, 'bouchon')}.`,
  },
  'place the pan': {
    full: (params) =>
      params.filter === undefined
        ? `Placer le bac de vidange sous ${writePart(params, 'vidange')}.`
        : `Placer un bac sous ${writePart(params, 'filtre')}. En laisser un sous la vidange ouverte.`,
    short: () => 'Bac en place',
    show: (params) => `Le bac, centré sous ${writePart(params, 'vidange')}.`,
  },
  'take out': {
    full: (params) => `Déposer ${writePart(params, 'bouchon')}.`,
    short: (params) => `${writeShortPart(params, 'bouchon')} : déposer`,
    show: (params) => `${writePart(params, 'bouchon')} à la dépose.`,
  },
  'take an oil sample': {
    full: (params) =>
      `Laisser couler la première huile ${writeOfPart(params, 'vidange')}. Tenir le flacon propre au milieu du jet. Le remplir aux trois quarts et le fermer aussitôt. Coller l’étiquette. Ne pas prélever dans le bac.`,
    short: () => 'Prélèvement : laisser couler la première huile ; flacon au milieu du jet, fermé, étiqueté',
    show: () => 'Le flacon au milieu du jet, puis son bouchon et son étiquette.',
  },
  'let drain': {
    full: ({ wait, fluid }) =>
      fluid === 'grease'
        ? 'Laisser couler la graisse. Retirer le reste à la spatule.'
        : wait === undefined
          ? 'Laisser couler l’huile jusqu’au goutte-à-goutte.'
          : `Laisser couler l’huile jusqu’au goutte-à-goutte. Compter au moins ${wait}.`,
    short: ({ wait, fluid }) =>
      fluid === 'grease'
        ? 'Graisse : laisser couler, retirer le reste'
        : `Laisser couler jusqu’au goutte-à-goutte${wait === undefined ? '' : ` (au moins ${wait})`}`,
    show: () => 'Le jet d’huile, jusqu’au goutte-à-goutte.',
  },
  'suck out the oil': {
    full: (params) => `Aspirer l’huile par ${writePart(params, 'ouverture')}.`,
    short: (params) => `Aspirer par : ${writeShortPart(params, 'ouverture')}`,
    show: (params) => `Le tuyau d’aspiration dans ${writePart(params, 'ouverture')}.`,
  },
  'take off cover': {
    full: takeOffCoverText,
    short: (params) =>
      params.cover?.carriesBearings === true
        ? `${writeShortPart(params, 'couvercle')} : déposer, uniquement selon le manuel`
        : `${writeShortPart(params, 'couvercle')} : décoller, puis déposer`,
    show: (params) => `${writePart(params, 'couvercle')} qui se décolle, et l’huile qui coule.`,
  },
  'inspect the oil': {
    full: ({ fluid }) =>
      fluid === 'grease'
        ? 'Examiner l’ancienne graisse sous une bonne lumière. En présence de copeaux, paillettes ou morceaux, arrêter : ne pas remplir. Consigner la machine. Si elle est laiteuse, arrêter : chercher l’entrée d’eau. La retirer entièrement.'
        : `Examiner l’ancienne huile sous une bonne lumière. ${STOP_AT_CHIPS} ${PASTE_IS_NORMAL} ${STOP_AT_WATER}`,
    short: () =>
      'Huile : si copeaux ou morceaux, arrêter, refermer, consigner ; si laiteuse, chercher l’eau et rincer',
    show: () => 'L’ancienne huile dans le bac, sous une bonne lumière.',
  },
  'inspect the magnet': {
    full: (params) =>
      `Examiner l’aimant ${writeOfPart(params, 'bouchon')}. ${STOP_AT_CHIPS} ${PASTE_IS_NORMAL}`,
    short: () => 'Aimant : si copeaux ou morceaux, arrêter, refermer, consigner',
    show: () => 'L’aimant, en gros plan.',
  },
  'clean the magnet': {
    full: () => 'Essuyer l’aimant.',
    short: () => 'Essuyer l’aimant',
    show: () => 'L’aimant propre.',
  },
  'take off filter': {
    full: (params) =>
      params.filter?.screwed === true
        ? `Dévisser lentement ${writePart(params, 'filtre')}. Laisser couler l’huile dans le bac. S’assurer que l’ancien joint vient avec.`
        : `Sortir ${writePart(params, 'filtre')}. Laisser couler l’huile dans le bac.`,
    short: (params) => `${writeShortPart(params, 'filtre')} : déposer`,
    show: (params) => `${writePart(params, 'filtre')} à la dépose, au-dessus du bac.`,
  },
  'inspect the filter': {
    full: (params) =>
      `Chercher du métal dans ${writePart(params, 'filtre')}. ${STOP_AT_CHIPS} ${PASTE_IS_NORMAL}`,
    short: (params) =>
      `${writeShortPart(params, 'filtre')} : si copeaux ou morceaux, arrêter, refermer, consigner`,
    show: (params) => `L’intérieur ${writeOfPart(params, 'filtre')}, en gros plan.`,
  },
  'clean the filter': {
    full: (params) =>
      `Nettoyer ${writePart(params, 'crépine')} au solvant. Laisser sécher. En cas de déchirure ou de bosse, remplacer.`,
    short: (params) => `${writeShortPart(params, 'crépine')} : nettoyer`,
    show: (params) => `${writePart(params, 'crépine')}, après nettoyage, à contre-jour.`,
  },
  'fit filter': {
    full: (params) => {
      const filterText = writePart(params, 'filtre')
      const isClean = params.filter?.renewed === false
      if (params.filter?.screwed !== true)
        return `${isClean ? `Remettre ${filterText}` : `Pièce neuve : monter ${filterText}`}. S’assurer du bon appui.`
      return `${isClean ? '' : 'Prendre une pièce neuve. '}Enduire d’huile neuve le joint ${writeOfPart(params, 'filtre')}. Visser à la main jusqu’au contact du joint.`
    },
    short: (params) => {
      const filterText = `${writeShortPart(params, 'filtre')}, ${params.filter?.renewed === false ? 'pièce propre' : 'pièce neuve'}`
      return params.filter?.screwed === true
        ? `${filterText} : huiler le joint, visser à la main`
        : `${filterText} : monter`
    },
    show: (params) => `${writePart(params, 'filtre')} au montage.`,
  },
  'tighten filter': {
    full: (params) =>
      params.turns === undefined
        ? writeTightening(params, writePart(params, 'filtre'))
        : `Serrer ${writePart(params, 'filtre')} de ${params.turns} tours après contact du joint.`,
    short: (params) =>
      params.turns === undefined
        ? writeShortTightening(params, writeShortPart(params, 'filtre'))
        : `${writeShortPart(params, 'filtre')} : ${params.turns} tours après contact`,
    show: (params) => `Les deux mains sur ${writePart(params, 'filtre')}.`,
  },
  'clear the breather': {
    full: ({ place }) => `S’assurer que le reniflard est dégagé${place === undefined ? '' : ` : ${place}`}.`,
    short: () => 'Reniflard dégagé',
    show: () => 'Le reniflard.',
  },
  'take off old seal': {
    full: (params) =>
      params.seal === 'thread sealant'
        ? 'Retirer l’ancienne pâte d’étanchéité des deux filetages.'
        : params.seal === 'liquid gasket'
          ? 'Gratter l’ancienne pâte à joint sur les deux faces. Ne rien laisser tomber dans le carter.'
          : params.cover !== undefined
            ? `Retirer ${writeOldSeal(params.seal ?? 'none')}. Ne rien en laisser sur les faces.`
            : `Retirer ${writeOldSeal(params.seal ?? 'none')}. Ne rien en laisser sur le carter.${writeStuckWasher(params)}`,
    short: (params) =>
      params.seal === 'thread sealant'
        ? 'Nettoyer les deux filetages'
        : `${writeOldSeal(params.seal ?? 'none')} : retirer`,
    show: (params) =>
      params.seal === 'thread sealant'
        ? 'Les deux filetages, propres.'
        : `${writeOldSeal(params.seal ?? 'none')}, et la face nue dessous.`,
  },
  'wipe the seal face': {
    full: (params) =>
      params.filter?.screwed === true
        ? `Essuyer la face d’appui du joint ${writeOfPart(params, 'filtre')}. S’assurer qu’aucun ancien joint n’y colle.`
        : params.cover === undefined
          ? `Essuyer ${writePart(params, 'bouchon')} et son siège.`
          : `Essuyer les deux faces de joint ${writeOfPart(params, 'couvercle')} : propres et sèches.`,
    short: (params) =>
      params.cover === undefined
        ? `${writeShortPart(params, 'bouchon')} et siège : essuyer`
        : `${writeShortPart(params, 'bouchon')}, face : essuyer`,
    show: (params) => `Le siège ${writeOfPart(params, 'bouchon')}, essuyé.`,
  },
  'fit new seal': {
    full: (params) => `Monter ${writeNewSeal(params.seal ?? 'none')} sur ${writePart(params, 'ouverture')}.`,
    short: (params) => `${writeShortPart(params, 'ouverture')} : ${writeNewSeal(params.seal ?? 'none')}`,
    show: (params) => `${writeNewSeal(params.seal ?? 'none')}, au montage.`,
  },
  'inspect the seal': {
    full: (params) =>
      `Contrôler ${writeTheSeal(params.seal ?? 'none')} ${writeOfPart(params, 'ouverture')} : coupures et méplats. S’il y en a, remplacer.`,
    short: (params) =>
      `${writeShortPart(params, 'ouverture')} : contrôler ${writeTheSeal(params.seal ?? 'none')}`,
    show: (params) => `${writeTheSeal(params.seal ?? 'none')}, en rotation lente.`,
  },
  'apply sealant': {
    full: (params) => {
      const product = params.sealant === undefined ? 'le produit d’étanchéité' : quote(params.sealant)
      return params.cover !== undefined
        ? `Appliquer ${product} sur la face propre ${writeOfPart(params, 'couvercle')}${params.bead === undefined ? '' : `, cordon de ${params.bead}`}. Ne laisser aucun vide dans le cordon. Passer à l’intérieur de chaque trou de vis.`
        : `Appliquer ${product} sur le filetage propre${params.part === undefined ? '' : ` ${writeOfPart(params, 'bouchon')}`}.`
    },
    short: (params) =>
      `Produit d’étanchéité : ${writeShortPart(params, 'filetage')}${params.bead === undefined ? '' : `, cordon ${params.bead}`}`,
    show: (params) => `Le produit d’étanchéité sur ${writePart(params, 'filetage')}.`,
  },
  fit: {
    full: (params) => `Visser ${writePart(params, 'bouchon')} à la main jusqu’en butée.`,
    short: (params) => `${writeShortPart(params, 'bouchon')} : visser à la main`,
    show: (params) => `${writePart(params, 'bouchon')}, vissage à la main.`,
  },
  tighten: {
    full: (params) => writeTightening(params, writePart(params, 'bouchon')),
    short: (params) => writeShortTightening(params, writeShortPart(params, 'bouchon')),
    show: (params) =>
      `La clé sur ${writePart(params, 'bouchon')} : une traction régulière, et le premier déclic.`,
  },
  'fit cover': {
    full: (params) =>
      params.cover?.carriesBearings === true
        ? `Monter ${writePart(params, 'couvercle')} uniquement selon le manuel de la machine : les cales règlent les roulements.`
        : `Poser ${writePart(params, 'couvercle')}. Visser toutes les vis à la main.`,
    short: (params) => `${writeShortPart(params, 'couvercle')} : poser, vis à la main`,
    show: (params) => `${writePart(params, 'couvercle')} à la pose, et les vis vissées à la main.`,
  },
  'tighten cover': {
    full: writeCoverTightening,
    short: (params) => {
      const order = BOLT_ORDERS[params.cover?.pattern ?? 'not stated']
      return writeShortTightening(
        params,
        `${writeShortPart(params, 'couvercle')}, vis${order === '' ? '' : ` ${order}`}`,
      )
    },
    show: (params) => `La clé sur les vis ${writeOfPart(params, 'couvercle')}, dans le bon ordre.`,
  },
  'wait for the cure': {
    full: ({ wait }) =>
      `Laisser durcir le produit d’étanchéité : ${wait ?? 'durée selon le fabricant du produit'}. Ne pas verser d’huile avant.`,
    short: ({ wait }) => `Durcissement avant l’huile${wait === undefined ? ' : voir le produit' : ''}`,
    show: () => 'Une horloge à côté du joint refermé.',
  },
  'measure the oil': {
    full: ({ volume, oil, gap, totalVolume, fluid }) =>
      fluid === 'grease' && volume !== undefined
        ? `Mesurer ${volume} de ${oil === undefined ? 'la bonne graisse' : quote(oil)}.`
        : volume === undefined
          ? `Mesurer la quantité dans un récipient gradué propre. La quantité ${gap === 'cannot tell' ? 'n’est pas connue ici' : 'n’est pas indiquée'} : voir le manuel.`
          : `Mesurer ${volume} de ${oil === undefined ? 'la bonne huile' : quote(oil)} dans un récipient gradué propre.${totalVolume === undefined ? '' : ` Avec l’additif, cela fait la quantité totale de ${totalVolume}.`}`,
    short: ({ volume, oil }) =>
      volume === undefined ? 'Mesurer la quantité (voir le manuel)' : `Mesurer : ${oil ?? 'la bonne huile'}`,
    show: () => 'Le récipient à hauteur des yeux, l’huile au repère.',
  },
  'add the additive': {
    full: ({ volume, oil, additive, additiveOrder }) =>
      additive === undefined && oil !== undefined
        ? `${quote(oil)} : pas d’additif ici, passer à l’étape suivante.`
        : `Verser ${volume === undefined ? 'la quantité indiquée' : volume} ${additive === undefined ? 'd’additif' : `de ${quote(additive)}`} par l’orifice de remplissage${additiveOrder === 'oil first' ? ', après l’huile' : ', avant l’huile'}.`,
    short: ({ oil, additive }) =>
      additive === undefined && oil !== undefined
        ? 'Pas d’additif avec cette huile'
        : `Ajouter : ${additive ?? 'additif'}`,
    show: () => 'L’additif qui entre.',
  },
  'pour the oil': {
    full: (params) => {
      const { volume, level, additiveOrder, fluid } = params
      const through = `lentement par ${writeHole(params)}`
      if (fluid === 'grease')
        return `Introduire ${volume === undefined ? 'la graisse' : `les ${volume} de graisse`} ${through}.`
      // The last liquid poured can run out at a level hole: it must be oil, not additive.
      if (level?.method === 'to level hole' && additiveOrder === 'additive first')
        return `Verser l’huile ${through} jusqu’à l’orifice de niveau${volume === undefined ? '' : ` : environ ${volume}`}. Ne pas dépasser.`
      return `Verser ${volume === undefined ? 'l’huile' : `les ${volume} d’huile`} ${through}.`
    },
    short: (params) =>
      `${params.fluid === 'grease' ? 'Introduire' : 'Verser'} : ${writeShortPart(params, 'remplissage')}`,
    show: (params) => `Le tuyau dans ${writeHole(params)}, et l’huile qui descend dans l’entonnoir.`,
  },
  'wait for the hose': {
    full: ({ wait, usualWait, fluid }) =>
      fluid === 'grease'
        ? 'Laisser à la graisse le temps de descendre. Laisser sortir l’air.'
        : wait === undefined
          ? `Attendre que rien ne goutte du tuyau.${usualWait === undefined ? '' : ` ${usualWait}`}`
          : `Attendre que rien ne goutte du tuyau : environ ${wait} dès le début du versement.`,
    short: ({ fluid }) =>
      fluid === 'grease' ? 'Laisser descendre la graisse' : 'Tuyau vide quand rien ne goutte',
    show: () => 'Le bout inférieur du tuyau, jusqu’à la dernière goutte.',
  },
  'check the level': {
    full: writeLevel,
    short: (params) =>
      `Niveau : ${writeShortPart(params, 'niveau')}${writeShortConditions(params)}${params.below === undefined ? '' : `, ${params.below} sous le bord`}`,
    show: (params) => `L’huile ${writeAtPart(params, 'niveau')}, en gros plan.`,
  },
  'top up': {
    full: writeTopUp,
    short: ({ stopAt, level }) =>
      `Appoint si bas, même huile${stopAt === undefined || level?.afterFilling !== true ? '' : ' ; au maximum, arrêter'}`,
    show: () => 'Un peu d’huile, et le niveau qui monte.',
  },
  'clear away': {
    full: ({ how }) =>
      `Retirer le bac, les outils et les cales.${how === undefined ? '' : ` Débloquer ce qui était bloqué pour le travail : ${how}.`} S’assurer que personne n’est près de la machine.`,
    short: ({ how }) =>
      `Bac, outils, cales et personnes à l’écart${how === undefined ? '' : ` ; débloquer : ${how}`}`,
    show: () => 'Le sol dégagé autour de la machine.',
  },
  'short run': {
    full: () => 'Faire tourner la machine quelques minutes.',
    short: () => 'Court essai',
    show: () => 'La machine sur un court trajet.',
  },
  'let settle': {
    full: ({ wait }) =>
      wait === undefined
        ? 'Laisser reposer l’huile aussi longtemps que le dit le manuel.'
        : `Laisser reposer l’huile ${wait}.`,
    short: ({ wait }) => `Repos${wait === undefined ? ' selon le manuel' : ''}`,
    show: () => 'La machine, immobile sur sol plat.',
  },
  'let a leak show': {
    full: () =>
      'Laisser la machine sèche sur les chandelles pendant dix minutes. Une fuite a besoin de temps pour apparaître.',
    short: () => 'Laisser sec pendant dix minutes',
    show: () => 'Le carter sec, et une horloge.',
  },
  'check for leaks': {
    full: ({ shield, instance }) =>
      `Chercher de l’huile à chaque bouchon et joint ouvert${instance === undefined ? '' : ` (${instance})`}${shield === undefined ? '' : `, par les trous et le long des bords de ${quote(shield)}`}. En cas de suintement, remplacer le joint. Ne pas serrer au-delà de la valeur du manuel.`,
    short: ({ shield, instance }) =>
      `Contrôle des fuites${instance === undefined ? '' : ` (${instance})`}${shield === undefined ? '' : ` à travers ${quote(shield)}`} ; si suintement, joint neuf, pas plus de couple`,
    show: () => 'Chaque bouchon, sec, éclairé.',
  },
  'wipe down': {
    full: ({ instance }) =>
      `Essuyer toute l’huile répandue${instance === undefined ? '' : ` (${instance})`}.`,
    short: ({ instance }) => `Essuyer${instance === undefined ? '' : ` (${instance})`}`,
    show: () => 'Le carter propre.',
  },
  'take used oil away': {
    full: () =>
      'Mettre l’huile usagée dans un bidon fermé marqué « Huile usagée ». La porter à un point de collecte.',
    short: () => 'Huile usagée dans le bidon fermé',
    show: () => 'Le bidon marqué, et son couvercle qui se ferme.',
  },
  record: {
    full: () => 'Noter ce qui a été fait et constaté.',
    short: () => 'Noter',
    show: () => 'Le rapport rempli.',
  },
}

const writeMark = (mark: keyof typeof WHEEL_WORDS | undefined) =>
  mark === undefined ? 'comme le montre le manuel' : `repère ${WHEEL_WORDS[mark]}`
