import { createHash } from 'node:crypto'
import type { Stats } from 'node:fs'
import {
  access,
  constants,
  type FileHandle,
  mkdir,
  open,
  readFile,
  readlink,
  realpath,
  rename,
  rm,
  stat,
} from 'node:fs/promises'
import { dirname, resolve } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { ABANDONED_AFTER_MS, type Claim, claimVersion } from './claimVersion.js'
import { type MakeText, UsageError } from './cliIo.js'

/** Points of a save where a test can stop it. */
export type SaveStep =
  | 'claimed'
  | 'swept'
  | 'opened'
  | 'piece written'
  | 'synced'
  | 'checked'
  | 'renamed'
  | 'confirmed'

export interface SaveOptions {
  readonly onStep?: (step: SaveStep) => void | Promise<void>
  /** The time to wait for another writer. */
  readonly waitMs?: number
  /** Maximum time for a save, less than the time after which others take over. */
  readonly maxMs?: number
}

/** A version of a file. */
interface FileVersion {
  readonly bytes: Buffer
  readonly stats: Stats
}

const PIECE_BYTES = 65_536

/**
 * Replaces a file by a text made from its old text. At any moment the file has either the old or the complete
 * new text; when the function returns, the new text is on the disk. If another process saves the same file
 * meanwhile, the text is made again from that version. Links are followed, mode and owner are kept, and only
 * a regular file is replaced.
 */
export async function saveFile(
  path: string,
  makeText: MakeText,
  { onStep = () => undefined, waitMs = 10_000, maxMs: holdMs = ABANDONED_AFTER_MS / 2 }: SaveOptions = {},
): Promise<void> {
  const target = await followLinks(path)
  const firstNewFolder = await mkdir(dirname(target), { recursive: true })
  const deadline = Date.now() + waitMs
  while (true) {
    const old = await readVersion(path, target)
    const text = await makeText(old?.bytes.toString('utf8'))
    if (text === undefined) return
    const bytes = Buffer.from(text)
    if (old?.bytes.equals(bytes)) return syncFolders(path, target, firstNewFolder)
    const startedAt = Date.now()
    const claim = await claimVersion(target, hashVersion(old))
    const isClaimed = !('holder' in claim)
    if (
      isClaimed &&
      (await replaceVersion({
        path,
        target,
        firstNewFolder,
        old,
        bytes,
        claim,
        until: startedAt + holdMs,
        onStep,
      }))
    )
      return
    if (Date.now() > deadline)
      throw new UsageError('beingWritten', { path, holder: isClaimed ? '' : claim.holder })
    await wait(10 + 30 * Math.random())
  }
}

interface Replacement {
  readonly path: string
  readonly target: string
  /** The first of the folders created for it. */
  readonly firstNewFolder: string | undefined
  readonly old: FileVersion | undefined
  readonly bytes: Buffer
  readonly claim: Claim
  readonly until: number
  readonly onStep: NonNullable<SaveOptions['onStep']>
}

/**
 * Writes the new text next to the file and renames it. If the file has changed since it was read, changes nothing
 * and returns false.
 */
async function replaceVersion({
  path,
  target,
  firstNewFolder,
  old,
  bytes,
  claim,
  until,
  onStep,
}: Replacement): Promise<boolean> {
  let replaced = false
  const isSame = async (): Promise<boolean> =>
    hashVersion(await readVersion(path, target)) === hashVersion(old)
  try {
    await onStep('claimed')
    if (!(await isSame())) return false
    await claim.deleteLeftovers()
    await onStep('swept')
    await writePart(claim.part, bytes, old?.stats, onStep)
    if (!((await claim.isCurrent()) && (await isSame()))) return false
    if (Date.now() > until) throw new UsageError('diskTooSlow', { path })
    await onStep('checked')
    await rename(claim.part, target)
    replaced = true
    await onStep('renamed')
    await syncFolders(path, target, firstNewFolder)
    await onStep('confirmed')
    return true
  } finally {
    // A failed release must not hide an earlier error or make a saved file look unsaved.
    await claim.release(replaced).catch(() => undefined)
  }
}

async function writePart(
  part: string,
  bytes: Buffer,
  oldStats: Stats | undefined,
  onStep: Replacement['onStep'],
): Promise<void> {
  await rm(part, { force: true })
  const file = await open(part, 'wx', oldStats === undefined ? 0o666 : 0o600)
  try {
    await onStep('opened')
    for (let at = 0; at < bytes.length; at += PIECE_BYTES) {
      await file.writeFile(bytes.subarray(at, at + PIECE_BYTES))
      await onStep('piece written')
    }
    if (oldStats !== undefined) await copyOwnerAndMode(file, oldStats)
    await file.sync()
    await onStep('synced')
  } finally {
    await file.close()
  }
}

/** Gives a file the owner and mode of another file. */
async function copyOwnerAndMode(file: FileHandle, { uid, gid, mode }: Stats): Promise<void> {
  const isAllowed = (operation: Promise<void>): Promise<boolean> =>
    operation.then(
      () => true,
      () => false,
    )
  const current = await file.stat()
  // Only an administrator may change the owner. If the group cannot be kept either, it loses its permissions.
  const keepsGroup =
    (current.uid === uid && current.gid === gid) ||
    (await isAllowed(file.chown(uid, gid))) ||
    (await isAllowed(file.chown(-1, gid)))
  const allowed = mode & (keepsGroup ? 0o7777 : 0o7707)
  if ((current.mode & 0o7777) !== allowed) await file.chmod(allowed)
}

/** The target of links, even if it does not exist yet. */
async function followLinks(path: string): Promise<string> {
  try {
    return await realpath(path)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error
  }
  const link = await readlink(path).catch(() => undefined)
  return link === undefined ? resolve(path) : followLinks(resolve(await realpath(dirname(path)), link))
}

/**
 * The current version; undefined if there is no file. A path that is not a file, or not writable, is an
 * error.
 */
async function readVersion(path: string, target: string): Promise<FileVersion | undefined> {
  try {
    const stats = await stat(target)
    if (!stats.isFile()) throw new UsageError('notAFile', { path, kind: kindOf(stats) })
    await access(target, constants.W_OK)
    return { bytes: await readFile(target), stats }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined
    throw error
  }
}

function kindOf(stats: Stats): 'folder' | 'pipe' | 'socket' | 'device' {
  if (stats.isDirectory()) return 'folder'
  if (stats.isFIFO()) return 'pipe'
  return stats.isSocket() ? 'socket' : 'device'
}

function hashVersion(version: FileVersion | undefined): string {
  return version === undefined
    ? 'none'
    : createHash('sha256').update(version.bytes).digest('hex').slice(0, 16)
}

/** Waits until the disk has the file, the folders created for it, and their names. */
async function syncFolders(path: string, target: string, firstNewFolder: string | undefined): Promise<void> {
  // Windows cannot sync folders.
  if (process.platform === 'win32') return
  const topFolder = firstNewFolder === undefined ? dirname(target) : dirname(firstNewFolder)
  for (let folder = dirname(target); ; folder = dirname(folder)) {
    const handle = await open(folder, 'r')
    try {
      await handle.sync()
    } catch (error) {
      const { code = '' } = error as NodeJS.ErrnoException
      // Some file systems cannot sync folders.
      if (!['EINVAL', 'ENOTSUP'].includes(code)) throw new UsageError('notConfirmed', { path, code })
    } finally {
      await handle.close()
    }
    if (folder === topFolder || folder === dirname(folder)) return
  }
}
