" Colours of Kettlemark where the editor takes no semantic tokens from the server.
" Written by scripts/syntaxes.mjs from words/words.json.
if exists('b:current_syntax')
  finish
endif

syntax case match
syntax iskeyword @,48-57,_,-,192-255

" A name is taken whole, so that no word within it is coloured.
syntax match kettlemarkName /[^0-9[:space:][:punct:]–—−±]\k*/

" What may stand at the start of a line.
let s:sections =
      \ 'formula house ingredient product sheet stage trial variant'
let s:verbs =
      \ 'blend boil bottom check cook cool cut deposit dip disperse dry dust enrobe fold hold ' ..
      \ 'hydrate keep mix never pack pipe pour rest set sift soak spread sprinkle stand ' ..
      \ 'stream temper warm weigh whip'
let s:facts =
      \ 'DE accept activates add allergen allergens-on-site altitude author basis batch bloom ' ..
      \ 'bowl caution centre change changed claim coagulates coat code contains currency ' ..
      \ 'density disperses drop expect filling form frame gels-with gluten hydrates kept ' ..
      \ 'label language layer loss lot make makes market may-contain measured melts mould ' ..
      \ 'names needs note pack pan percent photo price replace reversible reviewed role room ' ..
      \ 'saturates scale scored sets shelf show spare stands-in-for status suits supplier ' ..
      \ 'tempers texture thermometer threshold title tolerates tool traits use verdict ' ..
      \ 'version wafer withdraw'
function! s:head(group, words) abort
  execute 'syntax match ' .. a:group .. ' /^\s*\zs\%(' .. join(split(a:words), '\|') .. '\)\k\@!/'
endfunction
call s:head('kettlemarkSection', s:sections)
call s:head('kettlemarkVerb', s:verbs)
call s:head('kettlemarkFact', s:facts)

syntax keyword kettlemarkConnective
      \ above at below between by for from in into of on over per to under until while with
      \ within
syntax keyword kettlemarkAmount all part
syntax match kettlemarkAmount /q\.s\./

syntax match kettlemarkNumber /\d\+\%([.,/]\d\+\)*/
syntax match kettlemarkDate /\d\{4}-\d\d-\d\d/
" A unit stands after a number, with or without a space; the longer word comes first.
let s:units =
      \ 'months pieces fl-oz month piece weeks Brix cups days degC degF each g\/mL tbsp week ' ..
      \ '%RH cup day min ppm tsp aw cm kg lb mL mg mm oz pH °C °F % L g h m s'
execute 'syntax match kettlemarkUnit /\%(\d\s*\)\@8<=\%('
      \ .. join(split(s:units), '\|') .. '\)\k\@!/'

let s:states =
      \ 'bloomed caramel clear cool dissolved dry firm-ball firm-peak foam gelled hard-ball ' ..
      \ 'hard-crack hydrated light-caramel lump-free ribbon set skinned soft-ball soft-crack ' ..
      \ 'soft-peak stiff-peak tacky tempered thread wet-mix'
execute 'syntax match kettlemarkState /\%(\<until\s\+\)\@16<=\%('
      \ .. join(split(s:states), '\|') .. '\)\k\@!/'

let s:figures =
      \ 'density doctor-share dry-glass-transition energy glass-transition ' ..
      \ 'grained-water-activity moisture overrun sucrose-per-water supersaturation sweetness ' ..
      \ 'texture volume water-activity yield'
execute 'syntax match kettlemarkFigure /\%(^\s*\%(expect\|measured\|withdraw\)\s.*\)\@80<=\<\%('
      \ .. join(split(s:figures), '\|') .. '\)\k\@!/'

syntax match kettlemarkText /"[^"]*"\?/
syntax match kettlemarkComment /#.*$/

highlight default link kettlemarkSection Keyword
highlight default link kettlemarkVerb Function
highlight default link kettlemarkFact Type
highlight default link kettlemarkConnective Operator
highlight default link kettlemarkAmount Special
highlight default link kettlemarkNumber Number
highlight default link kettlemarkDate Constant
highlight default link kettlemarkUnit StorageClass
highlight default link kettlemarkState Constant
highlight default link kettlemarkFigure Identifier
highlight default link kettlemarkText String
highlight default link kettlemarkComment Comment

let b:current_syntax = 'kettlemark'
