/** A picture of the book on the page. */
import { useEffect, useRef } from 'react'
import type { Photo } from '../../domain/records/photo'

interface PictureProps {
  photo: Photo
  alt: string
  className: string | undefined
}

export function Picture({ photo, alt, className }: PictureProps) {
  const image = useRef<HTMLImageElement>(null)
  useEffect(() => {
    const url = URL.createObjectURL(new Blob([new Uint8Array(photo.bytes)], { type: photo.type }))
    if (image.current !== null) image.current.src = url
    return () => URL.revokeObjectURL(url)
  }, [photo])
  return <img ref={image} alt={alt} className={className} />
}
