/** The name mark: an arrow in elevation, point up, and the target line it lands on. */
import look from './name-mark.module.css'

export const NameMark = ({ size = 34 }: { size?: number }) => (
  <svg className={look.mark} viewBox="0 0 20 36" height={size} width={(size * 20) / 36} aria-hidden="true">
    <path className={look.head} d="M10 1 14.5 12H5.5Z" />
    <path d="M10 12V26" strokeWidth="2.2" />
    <path d="M10 24.5 5 29.5V35L10 31.5 15 35V29.5Z" />
    <path className={look.target} d="M0 18H7M13 18H20" />
  </svg>
)
