import type { StepTexts } from '../catalogue.js'
import {
  BOLT_ORDERS,
  takeOffCoverText,
  WHEEL_WORDS,
  writeCoverTightening,
  writeFluid,
  writeLevel,
  writePart,
  writeSeal,
  writeSealObject,
  writeShortConditions,
  writeShortPart,
  writeShortSeal,
  writeShortTightening,
  writeStuckWasher,
  writeTightening,
  writeTopUp,
} from './stepPhrases.js'

const METAL_STOP =
  'Bei Spänen, Plättchen oder Bruchstücken: Halt, Gehäuse schließen. Nicht befüllen. Maschine als außer Betrieb kennzeichnen.'
const PASTE_ONLY = 'Bei einer ersten Wartung nur grauer Abrieb oder etwas Glitzern: weiterarbeiten.'

/** The steps in German: short, infinitive, one instruction a sentence. */
export const stepTexts: StepTexts = {
  'find the variant': {
    full: () =>
      'Variante dieser Maschine feststellen: Typenschild und Teile ansehen. Schritte und Werte anderer Varianten auslassen.',
    short: () => 'Zuerst Variante feststellen',
    show: () => 'Das Typenschild der Maschine, nah.',
  },
  'read the manual': {
    full: () =>
      'Zuerst die Betriebsanleitung der Maschine lesen. Wenn diese Karte davon abweicht, der Betriebsanleitung folgen.',
    short: () => 'Zuerst Anleitung lesen',
    show: () => 'Die Betriebsanleitung der Maschine, aufgeschlagen auf der Seite der Wartung.',
  },
  'wear protection': {
    full: () => 'Handschuhe und Augenschutz anlegen.',
    short: () => 'Handschuhe, Augenschutz',
    show: () => 'Hände in Handschuhen und der Augenschutz.',
  },
  'park on level ground': {
    full: () => 'Maschine auf waagerechtem, festem Boden abstellen.',
    short: () => 'Waagerecht abstellen',
    show: () => 'Die ganze Maschine von der Seite, waagerecht auf festem Boden.',
  },
  'carry to level ground': {
    full: () =>
      'Maschine nicht starten und nicht abschleppen. Frei schieben oder mit der Winde frei ziehen. Auf waagerechten, festen Boden transportieren. Feststellbremse anziehen. Schlüssel abziehen.',
    short: () =>
      'Nicht starten oder schleppen: mit Winde frei ziehen, auf ebenen Boden transportieren, Bremse fest, Schlüssel ab',
    show: () => 'Die Maschine auf einem Anhänger, Motor aus.',
  },
  'warm the oil': {
    full: ({ temperature }) =>
      temperature === undefined
        ? 'Maschine laufen lassen, bis das Öl warm ist, nicht heiß.'
        : `Maschine laufen lassen, bis das Öl warm ist, nicht heiß. Laut Anleitung ${temperature}.`,
    short: () => 'Öl warmfahren, nicht heiß',
    show: () => 'Die Maschine auf einer kurzen Fahrt.',
  },
  'stop the engine': {
    full: () =>
      'Anbaugeräte auf den Boden absenken. Feststellbremse anziehen. Motor abstellen. Schlüssel abziehen. Warten, bis sich nichts mehr dreht.',
    short: () => 'Anbaugeräte ab, Bremse fest, Motor aus, Schlüssel ab',
    show: () => 'Eine Hand, die den Schlüssel abzieht.',
  },
  'chock the wheels': {
    full: ({ part }) =>
      part === undefined
        ? 'Jedes Rad und jede Raupe am Boden beidseitig verkeilen.'
        : `Jedes Rad beidseitig verkeilen: ${part}.`,
    short: ({ part }) => `Beidseitig verkeilen: ${part ?? 'jedes Rad, jede Raupe am Boden'}`,
    show: () => 'Die Unterlegkeile, fest an beiden Seiten jedes Rades.',
  },
  'secure the machine': {
    full: ({ part, how }) =>
      `${part === undefined ? 'Sichern, was die Anleitung nennt' : `${part} sichern`}: ${how ?? 'siehe Anleitung'}.`,
    short: ({ part, how }) => `${part ?? 'Sichern'}: ${how ?? 'siehe Anleitung'}`,
    show: ({ part }) => `${part ?? 'Alles'}, gesichert.`,
  },
  'raise the machine': {
    full: ({ part, jack }) =>
      jack !== undefined
        ? `Maschine mit dem Wagenheber anheben (${jack}). Nicht unter dem Wagenheber arbeiten.`
        : `Maschine${part === undefined ? '' : ` für Unterstellböcke (${part})`} anheben. Ansatzpunkt in der Anleitung suchen: hier nicht angegeben. Nicht unter dem Wagenheber arbeiten.`,
    short: ({ part, jack }) =>
      jack !== undefined
        ? `Wagenheber: ${jack}`
        : `Anheben${part === undefined ? '' : ` für Böcke (${part})`} (Ansatzpunkt: siehe Anleitung)`,
    show: () => 'Der Wagenheber am Ansatzpunkt, dann das Rad, wie es vom Boden abhebt.',
  },
  'set on stands': {
    full: ({ part }) =>
      `Maschine auf tragfähige Unterstellböcke setzen${part === undefined ? '' : ` (${part})`}. Sicherstellen, dass sie fest steht.`,
    short: ({ part }) => `Böcke${part === undefined ? '' : `: ${part}`}`,
    show: () => 'Die Unterstellböcke an ihren Ansatzpunkten und der abgesenkte Wagenheber.',
  },
  'lower the machine': {
    full: () =>
      'Sicherstellen, dass keine Person und kein Werkzeug unter der Maschine ist. Maschine von den Böcken anheben. Böcke herausnehmen. Langsam auf den Boden absenken.',
    short: () => 'Unten alles frei; von den Böcken, Böcke heraus, Maschine absenken',
    show: () => 'Die Räder, wie sie den Boden berühren.',
  },
  'drive onto ramps': {
    full: ({ part }) =>
      `Tragfähige Auffahrrampen gerade und dicht vor ${part === undefined ? 'jedes Rad stellen' : `die Räder stellen (${part})`}. Von einer Person von der Seite einweisen lassen. Langsam im kleinsten Gang hinauffahren. Anhalten, wenn jedes Rad am Anschlag steht.`,
    short: ({ part }) => `Rampen, ${part ?? 'jedes Rad'}: langsam mit Einweiser bis an die Anschläge`,
    show: () => 'Die Räder beim Hinauffahren, die einweisende Person und die Räder an den Anschlägen.',
  },
  'drive off ramps': {
    full: () =>
      'Sicherstellen, dass keine Person, kein Werkzeug und keine Wanne unter der Maschine ist. Von einer Person von der Seite einweisen lassen. Bremse lösen. Langsam auf demselben Weg herunterfahren. Rampen wegräumen.',
    short: () => 'Unten alles frei; langsam mit Einweiser von den Rampen',
    show: () => 'Die Räder, wie sie auf den Boden rollen.',
  },
  'remove shield': {
    full: (params) => `${writePart(params, 'Schutzblech')} abnehmen. Befestigungsteile zusammen aufbewahren.`,
    short: (params) => `${writeShortPart(params, 'Schutzblech')} ab`,
    show: (params) => `${writePart(params, 'Schutzblech')} beim Abnehmen, mit den Befestigungsteilen.`,
  },
  'refit shield': {
    full: (params) =>
      `${writePart(params, 'Schutzblech')} mit allen Befestigungsteilen wieder anbauen. ${writeTightening(params, 'Schrauben')}`,
    short: (params) =>
      `${writeShortPart(params, 'Schutzblech')} dran. ${writeShortTightening(params, 'Schrauben')}`,
    show: (params) => `${writePart(params, 'Schutzblech')} beim Anbauen.`,
  },
  'turn the wheel': {
    full: (params) =>
      params.wheelMark === undefined
        ? `Rad drehen, wie die Anleitung es zeigt: ${writePart(params, 'Öffnung')}.`
        : `${writePart({ ...params, part: 'Rad' }, 'Rad')} drehen, bis die Markierung ${WHEEL_WORDS[params.wheelMark]} steht. Hält eine Bremse oder ein Gang das Rad: nach Anleitung lösen, andere Achse verkeilt.`,
    short: (params) =>
      `Rad drehen${params.instance === undefined ? '' : ` (${params.instance})`}: ${params.wheelMark === undefined ? 'siehe Anleitung' : `Markierung ${WHEEL_WORDS[params.wheelMark]}`}; wenn eine Bremse oder ein Gang hält, siehe Anleitung`,
    show: () => 'Die Markierung am Rad, bis sie richtig steht.',
  },
  'roll the machine': {
    full: (params) =>
      `Bremse lösen. Maschine langsam bewegen. Anhalten, wenn die Markierung ${params.wheelMark === undefined ? 'so steht, wie die Anleitung es zeigt' : `${WHEEL_WORDS[params.wheelMark]} steht`}: ${writePart(params, 'Schraube')}. Bremse anziehen.`,
    short: (params) =>
      `Maschine bewegen${params.instance === undefined ? '' : ` (${params.instance})`}: ${params.wheelMark === undefined ? 'siehe Anleitung' : `Markierung ${WHEEL_WORDS[params.wheelMark]}`}`,
    show: () => 'Die Markierung am Rad, während die Maschine rollt, und die Person an der Bremse.',
  },
  'clean around': {
    full: (params) => `Umgebung reinigen: ${writePart(params, 'Öffnung')}.`,
    short: (params) => `Umgebung reinigen: ${writeShortPart(params, 'Öffnung')}`,
    show: (params) => `${writePart(params, 'Öffnung')}, schmutzig und dann sauber.`,
  },
  'crack loose': {
    full: (params) =>
      `${params.drive === 'hand' ? `${writePart(params, 'Schraube')} von Hand eine Umdrehung aufdrehen.` : `${writePart(params, 'Schraube')} lösen.`}${params.beforeDraining === true ? ` Geht das nicht: ${writeFluid(params)} nicht ablassen.` : ''}`,
    short: (params) =>
      params.drive === 'hand'
        ? `${writeShortPart(params, 'Schraube')} aufdrehen`
        : `${writeShortPart(params, 'Schraube')} lösen${params.beforeDraining === true ? `; geht das nicht: ${writeFluid(params)} nicht ablassen` : ''}`,
    show: (params) =>
      `${params.drive === 'hand' ? 'Eine Hand' : 'Der Hebel'} an: ${writePart(params, 'Schraube')}, und die erste kleine Drehung.`,
  },
  'nip by hand': {
    full: (params) => `${writePart(params, 'Schraube')} von Hand wieder eindrehen.`,
    short: (params) => `${writeShortPart(params, 'Schraube')} von Hand beidrehen`,
    show: (params) => `Finger an: ${writePart(params, 'Schraube')}.`,
  },
  'place the pan': {
    full: (params) =>
      params.filter === undefined
        ? `Auffangwanne unterstellen: ${writePart(params, 'Ablassöffnung')}.`
        : `Wanne unterstellen: ${writePart(params, 'Filter')}. Eine Wanne unter der offenen Ablassöffnung stehen lassen.`,
    short: () => 'Wanne unterstellen',
    show: (params) => `Die Wanne, mittig unter: ${writePart(params, 'Ablassöffnung')}.`,
  },
  'take out': {
    full: (params) => `${writePart(params, 'Schraube')} herausdrehen.`,
    short: (params) => `${writeShortPart(params, 'Schraube')} heraus`,
    show: (params) => `${writePart(params, 'Schraube')} beim Herausdrehen.`,
  },
  'take an oil sample': {
    full: (params) =>
      `Das erste Öl ablaufen lassen: ${writePart(params, 'Ablassöffnung')}. Saubere Flasche in die Mitte des Strahls halten. Zu drei Vierteln füllen und sofort verschließen. Etikett anbringen. Nicht aus der Wanne füllen.`,
    short: () => 'Ölprobe: erstes Öl ablaufen lassen; Flasche in Strahlmitte, verschließen, beschriften',
    show: () => 'Die Flasche in der Mitte des Strahls, dann Verschluss und Etikett.',
  },
  'let drain': {
    full: ({ wait, fluid }) =>
      fluid === 'grease'
        ? 'Fett ablaufen lassen. Rest herausschaben.'
        : wait === undefined
          ? 'Öl ablaufen lassen, bis es nur noch tropft.'
          : `Öl ablaufen lassen, bis es nur noch tropft. Mindestens ${wait} warten.`,
    short: ({ wait, fluid }) =>
      fluid === 'grease'
        ? 'Fett ablaufen lassen: Rest herausschaben'
        : `Ablaufen lassen, bis es nur noch tropft${wait === undefined ? '' : ` (mindestens ${wait})`}`,
    show: () => 'Der Ölstrahl, bis es nur noch tropft.',
  },
  'suck out the oil': {
    full: (params) => `Öl absaugen durch: ${writePart(params, 'Öffnung')}.`,
    short: (params) => `Absaugen durch: ${writeShortPart(params, 'Öffnung')}`,
    show: (params) => `Der Saugschlauch in: ${writePart(params, 'Öffnung')}.`,
  },
  'take off cover': {
    full: takeOffCoverText,
    short: (params) =>
      params.cover?.carriesBearings === true
        ? `${writeShortPart(params, 'Deckel')} ab: nur nach Anleitung`
        : `${writeShortPart(params, 'Deckel')} lösen, dann ab`,
    show: (params) => `${writePart(params, 'Deckel')} beim Abnehmen, während das Öl ausläuft.`,
  },
  'inspect the oil': {
    full: ({ fluid }) =>
      fluid === 'grease'
        ? 'Altes Fett bei gutem Licht prüfen. Bei Spänen, Plättchen oder Bruchstücken: Halt, nicht befüllen. Maschine als außer Betrieb kennzeichnen. Wenn es milchig ist: Halt, Eintrittsstelle des Wassers suchen. Alles herausreinigen.'
        : `Altes Öl bei gutem Licht prüfen. ${METAL_STOP} ${PASTE_ONLY} Wenn es milchig ist: Halt, Eintrittsstelle des Wassers suchen. Gehäuse, das milchiges Öl enthielt, vor dem Befüllen spülen. Dazu Öl nach Anleitung einfüllen. Maschine kurz laufen lassen. Abkühlen lassen. Öl ablassen.`,
    short: () =>
      'Öl: bei Spänen oder Bruchstücken Halt, schließen, kennzeichnen; wenn milchig, Wassereintritt suchen und spülen',
    show: () => 'Das alte Öl in der Wanne, bei gutem Licht.',
  },
  'inspect the magnet': {
    full: (params) => `Magnet prüfen: ${writePart(params, 'Schraube')}. ${METAL_STOP} ${PASTE_ONLY}`,
    short: () => 'Magnet: bei Spänen oder Bruchstücken Halt, schließen, kennzeichnen',
    show: () => 'Der Magnet, nah.',
  },
  'clean the magnet': {
    full: () => 'Magnet sauber wischen.',
    short: () => 'Magnet abwischen',
    show: () => 'Der saubere Magnet.',
  },
  'take off filter': {
    full: (params) =>
      params.filter?.screwed === true
        ? `${writePart(params, 'Filter')} langsam abschrauben. Öl daraus in die Wanne laufen lassen. Sicherstellen, dass der alte Dichtring mit abgeht.`
        : `${writePart(params, 'Filter')} herausnehmen. Öl daraus in die Wanne laufen lassen.`,
    short: (params) => `${writeShortPart(params, 'Filter')} ab`,
    show: (params) => `${writePart(params, 'Filter')} beim Abnehmen, über der Wanne.`,
  },
  'inspect the filter': {
    full: (params) => `Auf Metall prüfen: ${writePart(params, 'Filter')}. ${METAL_STOP} ${PASTE_ONLY}`,
    short: (params) =>
      `${writeShortPart(params, 'Filter')}: bei Spänen oder Bruchstücken Halt, schließen, kennzeichnen`,
    show: (params) => `Von innen, nah: ${writePart(params, 'Filter')}.`,
  },
  'clean the filter': {
    full: (params) =>
      `${writePart(params, 'Ölsieb')} mit Lösungsmittel reinigen. Trocknen lassen. Bei Rissen oder Beulen ersetzen.`,
    short: (params) => `${writeShortPart(params, 'Ölsieb')} reinigen`,
    show: (params) => `${writePart(params, 'Ölsieb')}, sauber, gegen das Licht.`,
  },
  'fit filter': {
    full: (params) => {
      const isClean = params.filter?.renewed === false
      if (params.filter?.screwed !== true)
        return `${isClean ? `${writePart(params, 'Filter')} wieder einsetzen` : `Neu einsetzen: ${writeShortPart(params, 'Filter')}`}. Auf richtigen Sitz achten.`
      const takeText = isClean ? '' : `Neu nehmen: ${writeShortPart(params, 'Filter')}. `
      return `${takeText}Dichtring${isClean ? ` (${writePart(params, 'Filter')})` : ''} mit neuem Öl benetzen. Von Hand aufschrauben, bis der Dichtring anliegt.`
    },
    short: (params) => {
      const state = params.filter?.renewed === false ? 'gereinigt' : 'neu'
      return `${writeShortPart(params, 'Filter')}, ${state}: ${params.filter?.screwed === true ? 'Dichtring ölen, von Hand aufschrauben' : 'einsetzen'}`
    },
    show: (params) => `${writePart(params, 'Filter')} beim Einbau.`,
  },
  'tighten filter': {
    full: (params) =>
      params.turns === undefined
        ? writeTightening(params, writePart(params, 'Filter'))
        : `${writePart(params, 'Filter')} ab Anlage des Dichtrings ${params.turns} Umdrehungen anziehen.`,
    short: (params) =>
      params.turns === undefined
        ? writeShortTightening(params, writeShortPart(params, 'Filter'))
        : `${writeShortPart(params, 'Filter')}: ${params.turns} Umdrehungen nach Anlage`,
    show: (params) => `Beide Hände an: ${writePart(params, 'Filter')}.`,
  },
  'clear the breather': {
    full: ({ place }) =>
      `Sicherstellen, dass der Entlüfter frei ist${place === undefined ? '' : `: ${place}`}.`,
    short: () => 'Entlüfter frei',
    show: () => 'Der Entlüfter.',
  },
  'take off old seal': {
    full: (params) =>
      params.seal === 'thread sealant'
        ? 'Altes Dichtmittel von beiden Gewinden entfernen.'
        : params.seal === 'liquid gasket'
          ? 'Altes Dichtmittel von beiden Flächen abschaben. Nichts davon in das Gehäuse fallen lassen.'
          : params.cover !== undefined
            ? `${writeSealObject('Alt', params)} entfernen. Auf keiner Fläche einen Rest lassen.`
            : `${writeSealObject('Alt', params)} entfernen. Am Gehäuse keinen Rest lassen.${writeStuckWasher(params)}`,
    short: (params) =>
      params.seal === 'thread sealant' ? 'Beide Gewinde reinigen' : `${writeShortSeal('Alt', params)} ab`,
    show: (params) =>
      params.seal === 'thread sealant'
        ? 'Beide Gewinde, sauber.'
        : `Nah: ${writeSeal(params)}, alt, und die blanke Fläche darunter.`,
  },
  'wipe the seal face': {
    full: (params) =>
      params.filter?.screwed === true
        ? `Dichtfläche abwischen: ${writePart(params, 'Filter')}. Sicherstellen, dass kein alter Dichtring daran klebt.`
        : params.cover === undefined
          ? `${writePart(params, 'Schraube')} und Sitz sauber wischen.`
          : `Beide Dichtflächen sauber und trocken wischen: ${writePart(params, 'Deckel')}.`,
    short: (params) =>
      params.cover === undefined
        ? `${writeShortPart(params, 'Schraube')} und Sitz abwischen`
        : `Dichtfläche abwischen: ${writeShortPart(params, 'Deckel')}`,
    show: (params) => `Der Sitz, sauber gewischt: ${writePart(params, 'Schraube')}.`,
  },
  'fit new seal': {
    full: (params) => `${writeSealObject('Neu', params)} einsetzen: ${writePart(params, 'Öffnung')}.`,
    short: (params) => `${writeShortSeal('Neu', params)}: ${writeShortPart(params, 'Öffnung')}`,
    show: (params) => `${writeSeal(params)}, neu, beim Einsetzen.`,
  },
  'inspect the seal': {
    full: (params) =>
      `${writeSeal(params)} auf Schnitte und flache Stellen prüfen: ${writePart(params, 'Öffnung')}. Bei Befund ersetzen.`,
    short: (params) => `${writeSeal(params)} prüfen: ${writeShortPart(params, 'Öffnung')}`,
    show: (params) => `${writeSeal(params)}, langsam gedreht.`,
  },
  'apply sealant': {
    full: (params) =>
      params.cover !== undefined
        ? `${params.sealant ?? 'Dichtmittel'} auf die saubere Fläche auftragen${params.bead === undefined ? '' : `, ${params.bead} dick`}: ${writePart(params, 'Deckel')}. Raupe ohne Lücke auftragen. Jedes Schraubenloch innen umfahren.`
        : `${params.sealant ?? 'Dichtmittel'} auf das saubere Gewinde auftragen: ${writePart(params, 'Schraube')}.`,
    short: (params) =>
      `Dichtmittel: ${writeShortPart(params, 'Gewinde')}${params.bead === undefined ? '' : `, Raupe ${params.bead}`}`,
    show: (params) => `Das Dichtmittel auf: ${writePart(params, 'Gewinde')}.`,
  },
  fit: {
    full: (params) => `${writePart(params, 'Schraube')} von Hand handfest eindrehen.`,
    short: (params) => `${writeShortPart(params, 'Schraube')} von Hand eindrehen`,
    show: (params) => `${writePart(params, 'Schraube')} beim Eindrehen von Hand.`,
  },
  tighten: {
    full: (params) => writeTightening(params, writePart(params, 'Schraube')),
    short: (params) => writeShortTightening(params, writeShortPart(params, 'Schraube')),
    show: (params) =>
      `Der Schlüssel an: ${writePart(params, 'Schraube')}: ein gleichmäßiger Zug und der erste Klick.`,
  },
  'fit cover': {
    full: (params) =>
      params.cover?.carriesBearings === true
        ? `Nur nach der Betriebsanleitung der Maschine anbauen: ${writePart(params, 'Deckel')}; die Ausgleichscheiben stellen die Lager ein.`
        : `${writePart(params, 'Deckel')} aufsetzen. Alle Schrauben von Hand eindrehen.`,
    short: (params) => `${writeShortPart(params, 'Deckel')} drauf, Schrauben von Hand`,
    show: (params) => `${writePart(params, 'Deckel')} beim Aufsetzen, die Schrauben von Hand eingedreht.`,
  },
  'tighten cover': {
    full: writeCoverTightening,
    short: (params) => {
      const order = BOLT_ORDERS[params.cover?.pattern ?? 'not stated']
      const bolts = `Schrauben (${writeShortPart(params, 'Deckel')})`
      return writeShortTightening(params, order === '' ? bolts : `${bolts} ${order}`)
    },
    show: (params) =>
      `Der Schlüssel an den Schrauben, in der richtigen Reihenfolge: ${writePart(params, 'Deckel')}.`,
  },
  'wait for the cure': {
    full: ({ wait }) =>
      `Dichtmittel aushärten lassen: ${wait ?? 'so lange, wie der Hersteller des Dichtmittels angibt'}. Vorher kein Öl eingießen.`,
    short: ({ wait }) => `Vor dem Öl aushärten lassen${wait === undefined ? ': siehe Dichtmittel' : ''}`,
    show: () => 'Eine Uhr neben der geschlossenen Fuge.',
  },
  'measure the oil': {
    full: ({ volume, oil, gap, totalVolume, fluid }) =>
      fluid === 'grease' && volume !== undefined
        ? `${volume} ${oil ?? 'vorgeschriebenes Fett'} abmessen.`
        : volume === undefined
          ? `Füllmenge in einem sauberen Messbecher abmessen. Die Menge ist ${gap === 'cannot tell' ? 'hier nicht bekannt' : 'nicht angegeben'}: siehe Anleitung.`
          : `${volume} ${oil ?? 'vorgeschriebenes Öl'} in einem sauberen Messbecher abmessen.${totalVolume === undefined ? '' : ` Zusammen mit dem Zusatz ist das die Füllmenge von ${totalVolume}.`}`,
    short: ({ volume, oil }) =>
      volume === undefined
        ? 'Füllmenge abmessen (siehe Anleitung)'
        : `${oil ?? 'Vorgeschriebenes Öl'} abmessen`,
    show: () => 'Der Messbecher auf Augenhöhe und das Öl an der Markierung.',
  },
  'add the additive': {
    full: ({ volume, oil, additive, additiveOrder }) =>
      additive === undefined && oil !== undefined
        ? `${oil} braucht hier keinen Zusatz: weiter mit dem nächsten Schritt.`
        : `${volume === undefined ? 'Angegebene Menge' : volume} ${additive ?? 'Zusatz'} ${additiveOrder === 'oil first' ? 'nach dem Öl' : 'vor dem Öl'} durch die Einfüllöffnung eingießen.`,
    short: ({ oil, additive }) =>
      additive === undefined && oil !== undefined
        ? 'Kein Zusatz bei diesem Öl'
        : `${additive ?? 'Zusatz'} zugeben`,
    show: () => 'Der Zusatz beim Eingießen.',
  },
  'pour the oil': {
    full: (params) => {
      const { volume, level, additiveOrder, fluid } = params
      const opening = writePart(params, 'Einfüllöffnung')
      if (fluid === 'grease')
        return `${volume === undefined ? '' : `${volume} `}Fett langsam durch die Öffnung einpressen: ${opening}.`
      // The last liquid poured can run out at a level hole: it must be oil, not additive.
      if (level?.method === 'to level hole' && additiveOrder === 'additive first')
        return `Öl langsam bis zur Kontrollbohrung eingießen${volume === undefined ? '' : `, etwa ${volume}`}: ${opening}. Nicht darüber.`
      return `${volume === undefined ? '' : `${volume} `}Öl langsam durch die Öffnung eingießen: ${opening}.`
    },
    short: (params) =>
      `${params.fluid === 'grease' ? 'Einpressen' : 'Eingießen'}: ${writeShortPart(params, 'Einfüllöffnung')}`,
    show: (params) =>
      `Der Schlauch in der Öffnung und das sinkende Öl im Trichter: ${writePart(params, 'Einfüllöffnung')}.`,
  },
  'wait for the hose': {
    full: ({ wait, usualWait, fluid }) =>
      fluid === 'grease'
        ? 'Dem Fett Zeit zum Setzen lassen. Luft entweichen lassen.'
        : wait === undefined
          ? `Warten, bis nichts mehr aus dem Schlauch tropft.${usualWait === undefined ? '' : ` ${usualWait}`}`
          : `Warten, bis nichts mehr aus dem Schlauch tropft: etwa ${wait} ab Beginn des Eingießens.`,
    short: ({ fluid }) =>
      fluid === 'grease' ? 'Fett sich setzen lassen' : 'Schlauch leer, wenn nichts mehr tropft',
    show: () => 'Das untere Ende des Schlauchs, bis zum letzten Tropfen.',
  },
  'check the level': {
    full: writeLevel,
    short: (params) =>
      `Ölstand: ${writeShortPart(params, 'Kontrollöffnung')}${writeShortConditions(params)}${params.below === undefined ? '' : `, ${params.below} unter der Kante`}`,
    show: (params) => `Das Öl, nah: ${writePart(params, 'Kontrollöffnung')}.`,
  },
  'top up': {
    full: writeTopUp,
    short: ({ stopAt, level }) =>
      `Wenn zu niedrig, gleiches Öl nachfüllen${stopAt === undefined || level?.afterFilling !== true ? '' : '; am Höchstwert Halt'}`,
    show: () => 'Etwas Öl und der steigende Ölstand.',
  },
  'clear away': {
    full: ({ how }) =>
      `Auffangwanne, Werkzeug und Keile wegräumen.${how === undefined ? '' : ` Für die Arbeit Gesichertes lösen: ${how}.`} Sicherstellen, dass niemand nahe der Maschine ist.`,
    short: ({ how }) =>
      `Wanne, Werkzeug, Keile und Personen weg${how === undefined ? '' : `; lösen: ${how}`}`,
    show: () => 'Der freie Boden um die Maschine.',
  },
  'short run': {
    full: () => 'Maschine einige Minuten laufen lassen.',
    short: () => 'Kurz laufen lassen',
    show: () => 'Die Maschine auf einer kurzen Fahrt.',
  },
  'let settle': {
    full: ({ wait }) =>
      wait === undefined
        ? 'Öl so lange ruhen lassen, wie die Anleitung vorschreibt.'
        : `Öl ruhen lassen: ${wait}.`,
    short: ({ wait }) => `Öl ruhen lassen${wait === undefined ? ': siehe Anleitung' : ''}`,
    show: () => 'Die Maschine, still auf waagerechtem Boden.',
  },
  'let a leak show': {
    full: () =>
      'Maschine trocken gewischt zehn Minuten auf den Böcken stehen lassen. Eine undichte Stelle zeigt sich erst nach einiger Zeit.',
    short: () => 'Zehn Minuten trocken stehen lassen',
    show: () => 'Das trockene Gehäuse und eine Uhr.',
  },
  'check for leaks': {
    full: ({ shield, instance }) =>
      `Jede geöffnete Schraube und Fuge${instance === undefined ? '' : ` (${instance})`} auf Öl prüfen${shield === undefined ? '' : `, durch die Löcher und an den Kanten: ${shield}`}. Schwitzt eine Stelle, Dichtung ersetzen. Nicht über den Wert der Anleitung anziehen.`,
    short: ({ shield, instance }) =>
      `Dichtheit prüfen${instance === undefined ? '' : ` (${instance})`}${shield === undefined ? '' : ` durch: ${shield}`}; wenn es schwitzt, neue Dichtung, nicht nachziehen`,
    show: () => 'Jede Schraube, trocken, im Licht einer Lampe.',
  },
  'wipe down': {
    full: ({ instance }) =>
      `Verschüttetes Öl vollständig abwischen${instance === undefined ? '' : ` (${instance})`}.`,
    short: ({ instance }) => `Abwischen${instance === undefined ? '' : ` (${instance})`}`,
    show: () => 'Das saubere Gehäuse.',
  },
  'take used oil away': {
    full: () =>
      'Altöl in einen geschlossenen Kanister mit der Aufschrift „Altöl“ füllen. Zu einer Sammelstelle bringen.',
    short: () => 'Altöl in den geschlossenen Kanister',
    show: () => 'Der beschriftete Kanister und der Deckel beim Schließen.',
  },
  record: {
    full: () => 'Ausgeführte Arbeiten und Befunde eintragen.',
    short: () => 'Eintragen',
    show: () => 'Der ausgefüllte Nachweis.',
  },
}
