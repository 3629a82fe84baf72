/** A button that answers. It is never disabled: what cannot be done is said when it is pressed. */
import type { ButtonHTMLAttributes } from 'react'
import look from './button.module.css'

interface ButtonProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'disabled' | 'className'> {
  /** `primary`: the one next action. `plain`: any other. `text`: beside a field or in a row. */
  kind?: 'primary' | 'plain' | 'text'
  /** For the bench: twenty millimetres high, taking the width it is given. */
  broad?: boolean
}

export const buttonLook = (kind: NonNullable<ButtonProps['kind']>, broad = false) =>
  [look.button, look[kind], broad ? look.broad : ''].join(' ')

export const Button = ({ kind = 'plain', broad = false, type = 'button', ...rest }: ButtonProps) => (
  <button {...rest} type={type} className={buttonLook(kind, broad)} />
)
