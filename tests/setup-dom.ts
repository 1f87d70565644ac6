import '@testing-library/jest-dom/vitest';
import { cleanup, configure } from '@testing-library/react';
import { afterEach, beforeEach, expect } from 'vitest';
// Components fetch it when something is done and do not wait for it: a test file may be over by then, and the fetch would fail the next one.
import '../components/record/add-attempt';

// What never comes is the only thing that fails a test, not a busy machine.
configure({ asyncUtilTimeout: 300_000 });

// React reports wrong markup, missing keys and updates outside act() only on the console: there it counts as a failure.
const original = { error: console.error, warn: console.warn };
let heard: string[] = [];

beforeEach(() => {
  heard = [];
  console.error = (...parts: unknown[]) => {
    heard.push(parts.map(String).join(' '));
  };
  console.warn = console.error;
});

afterEach(() => {
  cleanup();
  localStorage.clear();
  sessionStorage.clear();
  console.error = original.error;
  console.warn = original.warn;
  expect(heard, 'nothing may be written to console.error or console.warn').toEqual([]);
});
