'use client';

import { createContext, useContext } from 'react';

/** What a field has to know of the form it stands in: how ids begin, and what is wrong, by the field's name. */
interface FormState {
  readonly id: string;
  readonly problems: Readonly<Record<string, string>>;
}

export const FormContext = createContext<FormState>({ id: 'form', problems: {} });

/** The id of a field, of its problem and of its help, and the attributes that tie them together for a screen reader. */
export function useField(name: string, help?: string) {
  const { id, problems } = useContext(FormContext);
  const fieldId = `${id}-${name}`;
  const problem = problems[name];
  const described = [help && `${fieldId}-help`, problem && `${fieldId}-problem`].filter(Boolean).join(' ');
  return {
    fieldId,
    problem,
    attributes: {
      ...(described ? { 'aria-describedby': described } : {}),
      ...(problem ? { 'aria-invalid': true as const } : {}),
    },
  };
}
