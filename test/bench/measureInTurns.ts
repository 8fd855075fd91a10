/** Anything that a call can give; promises are awaited. */
export type Work = () => unknown

export interface MeasureOptions {
  readonly rounds?: number
  /** The shortest CPU time of a round in ms: short calls are repeated until it is over. */
  readonly roundMs?: number
  /** CPU time in ms that each work runs before it is measured, so that the engine has optimised it. */
  readonly warmUpMs?: number
}

/** CPU time of this process in microseconds, with the threads that compile and collect garbage. */
export function cpuMicros(): number {
  const { user, system } = process.cpuUsage()
  return user + system
}

async function timeCalls(work: Work, calls: number): Promise<number> {
  const before = cpuMicros()
  for (let call = 0; call < calls; call++) {
    const result = work()
    if (result instanceof Promise) await result
  }
  return cpuMicros() - before
}

/** Calls that fill a round: after the warm-up, since a cold call takes many times as long. */
async function countCalls(work: Work, roundMs: number, warmUpMs: number): Promise<number> {
  const first = await timeCalls(work, 1)
  let spent = first
  let micros = first
  for (let calls = 1; spent < warmUpMs * 1000; calls *= 2) {
    const time = await timeCalls(work, calls)
    spent += time
    micros = time / calls
  }
  return Math.max(1, Math.ceil((roundMs * 1000) / Math.max(micros, 0.001)))
}

/**
 * CPU time of each work in microseconds a call, for each round. The works run in turns, so that other processes slow
 * all of them equally and ratios of one round can be compared.
 */
export async function measureInTurns<Name extends string>(
  works: Readonly<Record<Name, Work>>,
  { rounds = 15, roundMs = 20, warmUpMs = 200 }: MeasureOptions = {},
): Promise<Readonly<Record<Name, readonly number[]>>> {
  const tasks: { name: Name; work: Work; calls: number; times: number[] }[] = []
  for (const name of Object.keys(works) as Name[]) {
    const work = works[name]
    tasks.push({ name, work, calls: await countCalls(work, roundMs, warmUpMs), times: [] })
  }
  for (let round = 0; round < rounds; round++)
    for (const { work, calls, times } of tasks) times.push((await timeCalls(work, calls)) / calls)
  return Object.fromEntries(tasks.map(({ name, times }) => [name, times])) as Record<Name, number[]>
}
