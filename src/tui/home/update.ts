/** A choice in the home menu. */
import { freshBench } from '../bench/update.js';
import { goOn } from '../drill/set.js';
import { ask, show, startPlacing } from '../kit/moves.js';
import type { State, World } from '../kit/state.js';

/** Goes where a choice of the menu leads. */
export function chooseAtHome(state: State, world: World, value: string, at: number): State {
  switch (value) {
    case 'go-on':
      return goOn(state, world, at);
    case 'practise':
      return ask(show(state, { name: 'waiting' }), { type: 'start-set', choice: {} });
    case 'placing':
      return startPlacing(state);
    case 'families':
      return show(state, { name: 'families', selected: 0 });
    case 'bench':
      return show(state, freshBench(world, state.settings.palette));
    case 'progress':
      return ask(show(state, { name: 'progress', top: 0 }), { type: 'read-progress' });
    case 'settings':
      return show(state, { name: 'settings' });
    case 'help':
      return show(state, { name: 'help', top: 0 });
    case 'quit':
      return ask(state, { type: 'exit', code: 0 });
    default:
      return state;
  }
}
