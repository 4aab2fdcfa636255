import {test} from 'vitest';
import {recipesFor} from '../src/recipes/index.js';
import { bareLoop, LOOPS_PER_MS } from './bench/film-loop.js';
import {STUDIO, paintOf} from './studio.js';
const box=(n:string)=>STUDIO.palettes.find(p=>p.id===n)!.pigments;
const W=['puddle','glaze','strokes'] as const;
const a=paintOf('burnt-sienna'), b=paintOf('ultramarine-blue'); const out=new Float64Array(38);
function unit(){const t=performance.now();for(let i=0;i<3000;i++)bareLoop(a,b,.2,.1,.9,out);return (performance.now()-t)/3000;}
function show(name:string,wish:any,paints=box('twelve'),ways:any=W){
  unit();recipesFor(STUDIO,wish,{paints,ways,most:3});
  const u=unit();const t=performance.now();const r=recipesFor(STUDIO,wish,{paints,ways,most:3});const ms=performance.now()-t;
  const o=[`== ${name} reach ${r.reach} ${JSON.stringify(r.edge??'')} ${r.start?`start step ${r.start.step.toFixed(1)} C ${r.start.chroma.toFixed(0)} h ${r.start.hue.toFixed(0)}`:''} ${(ms/u/LOOPS_PER_MS).toFixed(0)} ms eq`];
  for(const x of r.recipes)o.push(`   ${x.way} ${x.parts.map(p=>`${p.pigment} ${p.parts} ${p.relation??''}`).join(', ')} s ${x.strength.toFixed(2)} thin ${x.thin} | step ${x.colour.step.toFixed(2)} C ${x.colour.chroma.toFixed(0)} h ${x.colour.hue.toFixed(0)} kept ${x.kept.toFixed(2)} mark ${x.mark} dE ${x.deltaE00?.toFixed(2)}`);
  console.log(o.join('\n'));
}
test('x',()=>{
 const bs={paints:{'burnt-sienna':1},strength:.3}, cr={paints:{'cadmium-red':1},strength:.4}, sg={paints:{'sap-green':1},strength:.3};
 const all=STUDIO.paints.map(p=>p.id); const many=[...new Set([...box('twelve'),...box('clear'),...box('harbour')])].slice(0,24);
 show('bs rich +2',{from:bs,aim:'rich',darker:2});
 show('bs rich +2 clear',{from:bs,aim:'rich',darker:2},box('clear'));
 show('bs rich +2 24',{from:bs,aim:'rich',darker:2},many);
 show('bs shade +2',{from:bs,aim:'shade',darker:2});
 show('cr dist -1',{from:cr,aim:'distance',darker:-1});
 show('cr dull',{from:cr,aim:'dull',darker:0});
 show('cr dull puddle',{from:cr,aim:'dull',darker:0},box('twelve'),['puddle']);
 show('sg shade 1.5',{from:sg,aim:'shade',darker:1.5});
 show('sg shade 1.5 p',{from:sg,aim:'shade',darker:1.5},box('twelve'),['puddle']);
 show('to dark grey bs+um',{to:{l:28,a:0,b:0}},['burnt-sienna','ultramarine-blue'],['puddle']);
 show('to dark grey 12',{to:{l:28,a:0,b:0}},box('twelve'),['puddle']);
 show('to brown 12',{to:{l:40,a:10,b:20}},box('twelve'),['puddle']);
 show('to brown 24',{to:{l:40,a:10,b:20}},many,['puddle']);
 show('to brown 12 all ways',{to:{l:40,a:10,b:20}},box('twelve'));
 show('to pink out',{to:{l:60,a:95,b:-60}},box('twelve'),['puddle']);
 show('to brown from bs',{from:bs,to:{l:40,a:10,b:20}},box('twelve'));
 console.log(many.length, all.length);
},600000);
