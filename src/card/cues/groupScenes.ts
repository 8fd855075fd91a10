import type { SceneKind } from '../../message/index.js'
import type { PlannedStep, VisitPlan } from '../../service/index.js'

type PlanLine = VisitPlan['lines'][number]

/** Lines of the plan that are one scene. */
export interface WorkScene {
  readonly kind: Exclude<SceneKind, 'opening' | 'interval' | 'tools' | 'variants'>
  /** Path and instance of the gearcase; absent: the machine or several gearcases. */
  readonly gearcase?: string
  readonly lines: { readonly line: PlanLine; readonly index: number }[]
}

/** Kinds of scenes that show a single gearcase. */
const GEARCASE_SCENES: ReadonlySet<WorkScene['kind']> = new Set(['open', 'inside', 'fill'])

/** The scene of a line after the scene `current`; undefined if it belongs to the next line. */
function chooseKind(
  kind: PlanLine['kind'],
  steps: readonly PlannedStep[],
  current: WorkScene['kind'] | undefined,
): WorkScene['kind'] | undefined {
  const isAfterWork = current === 'check' || current === 'run'
  switch (kind) {
    case 'variant':
    case 'prepare':
      return 'ready'
    case 'run':
      return current === undefined || current === 'ready' ? 'ready' : 'run'
    case 'raise':
    case 'turn':
      return undefined
    case 'shield':
      return isAfterWork && steps.some((step) => step.do === 'refit shield') ? current : undefined
    case 'lower':
      return isAfterWork ? current : undefined
    case 'loosen':
    case 'drain':
    case 'filter':
      return 'open'
    case 'inspect':
      return 'inside'
    case 'cure':
      return current ?? 'inside'
    case 'close':
      return current === 'fill' || current === 'run' ? current : 'inside'
    case 'fill':
      return 'fill'
    case 'level':
      return current === 'run' ? 'run' : 'fill'
    case 'leaks':
      if (current === 'run') return current
      return current === undefined || steps.some((step) => step.do === 'check for leaks') ? 'check' : current
    case 'finish':
      return 'closing'
  }
}

function findGearcase(steps: readonly PlannedStep[]): string | undefined {
  const [gearcase, ...others] = new Set(
    steps.flatMap(({ part }) => {
      const path = /^\/gearcases\/[^/]+/.exec(part?.path ?? '')?.[0]
      return path === undefined ? [] : [`${path} ${part?.instance?.id ?? ''}`]
    }),
  )
  return others.length > 0 ? undefined : gearcase
}

/**
 * Joins the lines of a plan into scenes. A scene is filmed in one place: opening and draining a gearcase, inspecting
 * and closing it, or filling it. Raising the machine, turning a wheel and removing a shield belong to the work that
 * follows.
 */
export function groupScenes(plan: VisitPlan): readonly WorkScene[] {
  const stepById = new Map(plan.steps.map((step) => [step.id, step]))
  const scenes: WorkScene[] = []
  let waiting: WorkScene['lines'] = []
  for (const [index, line] of plan.lines.entries()) {
    const steps = line.steps.flatMap((id) => stepById.get(id) ?? [])
    const current = scenes.at(-1)
    const kind = chooseKind(line.kind, steps, current?.kind)
    if (kind === undefined) {
      waiting.push({ line, index })
      continue
    }
    const gearcase = GEARCASE_SCENES.has(kind) ? findGearcase(steps) : undefined
    const lines = [...waiting, { line, index }]
    waiting = []
    const isSameGearcase = gearcase === undefined || gearcase === current?.gearcase
    if (current?.kind === kind && isSameGearcase) current.lines.push(...lines)
    else scenes.push({ kind, ...(gearcase !== undefined && { gearcase }), lines })
  }
  const last = scenes.at(-1)
  if (last !== undefined) last.lines.push(...waiting)
  else if (waiting.length > 0) scenes.push({ kind: 'ready', lines: waiting })
  return scenes
}
