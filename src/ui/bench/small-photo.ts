/** A picture from the camera, made small enough for the book: at most sixty kilobytes, its place and camera left out. */
import { PHOTO_LIMIT, photoOf } from '../../domain/records/photo'
import type { Photo } from '../../domain/records/photo'

/** Longest side in pixels and quality, tried in turn: a shaft end stays readable in each. */
const TRIES: readonly (readonly [number, number])[] = [
  [1280, 0.7],
  [1024, 0.6],
  [800, 0.5],
  [640, 0.4],
  [400, 0.3],
]

/** @returns undefined where the file is no picture that this browser can read, or would not become small enough */
export async function smallPhoto(file: Blob): Promise<Photo | undefined> {
  const picture = await createImageBitmap(file).catch(() => undefined)
  if (picture === undefined) return undefined
  try {
    for (const [most, quality] of TRIES) {
      const blob = await drawn(picture, Math.min(1, most / Math.max(picture.width, picture.height)), quality)
      if (blob !== null && blob.size <= PHOTO_LIMIT)
        return photoOf('image/jpeg', new Uint8Array(await blob.arrayBuffer()))
    }
    return undefined
  } finally {
    picture.close()
  }
}

function drawn(picture: ImageBitmap, share: number, quality: number): Promise<Blob | null> {
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(picture.width * share))
  canvas.height = Math.max(1, Math.round(picture.height * share))
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height)
  return new Promise((made) => canvas.toBlob(made, 'image/jpeg', quality))
}
