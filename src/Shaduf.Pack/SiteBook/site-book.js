(function () {
  'use strict';

  var all = function (selector, root) { return Array.prototype.slice.call((root || document).querySelectorAll(selector)); };
  var one = function (id) { return document.getElementById(id); };
  var book = JSON.parse(one('book').textContent);
  var promise = JSON.parse(one('promise').textContent);
  var key = 'site-book/' + book.station;
  var isKept = true;
  var isChanged = false;
  var state = fresh();

  function fresh() { return { issues: [], ticks: {}, readings: {}, texts: {}, notes: {} }; }

  // A phone may refuse to keep anything: the page works on, says so, and asks for the file before it is closed.
  function load() {
    try {
      var text = window.localStorage.getItem(key);
      var kept = text ? JSON.parse(text) : null;
      state = kept && kept.ticks && kept.readings && kept.texts && kept.notes && kept.issues ? kept : fresh();
    } catch (refused) {
      isKept = false;
    }
    if (state.issues.indexOf(book.brief) < 0) {
      book.ticked.forEach(function (tick) {
        if (!state.ticks[tick.point]) { state.ticks[tick.point] = { at: tick.at || '', by: tick.by }; }
      });
      state.issues.push(book.brief);
    }
  }

  function save() {
    isChanged = true;
    try {
      window.localStorage.setItem(key, JSON.stringify(state));
      isKept = true;
    } catch (refused) {
      isKept = false;
    }
    tellKept();
  }

  function tellKept() {
    var told = one('kept');
    var says = '';
    if (!isKept) { says = 'This phone does not let the page keep its ticks. They last until it is closed: save the file first (Hand back).'; }
    else if (state.issues.length > 1) { says = 'Some ticks were made with an earlier issue of this book: look at them again.'; }
    told.hidden = says === '';
    told.textContent = says;
  }

  function two(number) { return (number < 10 ? '0' : '') + number; }

  function clock() {
    var now = new Date();
    return now.getFullYear() + '-' + two(now.getMonth() + 1) + '-' + two(now.getDate()) + 'T' + two(now.getHours()) + ':' + two(now.getMinutes());
  }

  // Ticks.
  var boxes = all('input[data-point]');

  function paintTicks() {
    boxes.forEach(function (box) {
      var tick = state.ticks[box.getAttribute('data-point')];
      box.checked = !!tick;
      box.parentNode.querySelector('small').textContent = tick ? [tick.by, tick.at.replace('T', ' ')].filter(Boolean).join(', ') : '';
    });
    all('.count').forEach(function (count) {
      var list = all('input[data-point]', one(count.getAttribute('data-list')));
      var done = list.filter(function (box) { return box.checked; }).length;
      count.textContent = done === list.length ? 'done' : done + ' of ' + list.length;
    });
  }

  boxes.forEach(function (box) {
    box.addEventListener('change', function () {
      var point = box.getAttribute('data-point');
      var isHold = box.parentNode.classList.contains('hold');
      if (box.checked) {
        state.ticks[point] = { at: clock(), by: (state.texts.by || '').trim() };
      } else if (!isHold || window.confirm('Take the tick of this hold away?')) {
        delete state.ticks[point];
      }
      save();
      paintTicks();
    });
  });

  one('next').addEventListener('click', function () {
    var open = boxes.filter(function (box) { return !box.checked; })[0] || one('tests');
    open.scrollIntoView({ block: 'center' });
    if (open.focus) { open.focus({ preventScroll: true }); }
  });

  // Readings.
  var sheets = all('fieldset[data-sheet]');

  function place(sheet, field) { return sheet.getAttribute('data-sheet') + '.' + sheet.getAttribute('data-number') + '.' + field; }

  function number(input) {
    var text = input.value.trim();
    return /^[-+]?\d+([.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : NaN;
  }

  function attribute(input, name) { return input.getAttribute('data-' + name); }

  function fault(input) {
    var value = number(input);
    if (input.value.trim() === '') { return ''; }
    if (isNaN(value)) { return 'Not a number.'; }
    var isIn = value >= Number(attribute(input, 'lowest')) && value <= Number(attribute(input, 'highest'));
    return isIn ? '' : 'Cannot be: ' + attribute(input, 'lowest') + ' to ' + attribute(input, 'highest') + ' ' + attribute(input, 'unit') + ' is accepted.';
  }

  // Where a value lies between two steps of a table: the lower step, and how far it is beyond it.
  function between(steps, value) {
    var i = 0;
    while (i < steps.length - 2 && steps[i + 1] < value) { i++; }
    var part = (value - steps[i]) / (steps[i + 1] - steps[i]);
    return { low: i, part: Math.min(1, Math.max(0, part)) };
  }

  function inGrid(grid, light, cell) {
    var x = between(promise.lights, light);
    var y = between(promise.cells, cell);
    var row = function (j) { return grid[j][x.low] * (1 - x.part) + grid[j][x.low + 1] * x.part; };
    return row(y.low) * (1 - y.part) + row(y.low + 1) * y.part;
  }

  function inLine(steps, values, value) {
    var x = between(steps, value);
    return value < steps[0] ? 0 : values[x.low] * (1 - x.part) + values[x.low + 1] * x.part;
  }

  function verdict(name, value, lowest, highest, unit, digits) {
    var range = isFinite(highest) && lowest > 0 ? lowest.toFixed(digits) + ' to ' + highest.toFixed(digits)
      : isFinite(highest) ? 'at most ' + highest.toFixed(digits) : 'at least ' + lowest.toFixed(digits);
    var said = isNaN(value) ? '' : value >= lowest && value <= highest ? ': meets it' : ': LOOK AGAIN';
    return name + ' promised ' + range + ' ' + unit + said;
  }

  function promised(kind, read) {
    var lines = [];
    var shares = promise.shares;
    if (kind === 'strings' && !isNaN(read.light) && !isNaN(read.cell)) {
      var volts = inGrid(promise.open, read.light, read.cell);
      lines.push(verdict('Open voltage', read.open, volts * (1 - shares.open), volts * (1 + shares.open), 'V', 0));
      if (read.light >= promise.shortLight) {
        var amperes = inGrid(promise.short, read.light, read.cell);
        lines.push(verdict('Short-circuit current', read.short, amperes * (1 - shares.short), amperes * (1 + shares.short), 'A', 2));
      }
    }
    if (kind === 'strings') { lines.push(verdict('Insulation', read.insulation, promise.least.insulation, Infinity, 'Mohm', 1)); }
    if (kind === 'station') {
      lines.push(verdict('Earth', read.earth, 0, promise.most.earth, 'ohm', 0));
      lines.push(verdict('Motor and cable', read.motor, promise.least.motor, Infinity, 'Mohm', 0));
    }
    if (kind === 'pump' && !isNaN(read.voltage) && !isNaN(read.current)) {
      var flow = inLine(promise.powers, promise.flows, read.voltage * read.current);
      lines.push(verdict('With water as low as in the dry season: flow', read.flow, flow * (1 - shares.flow), Infinity, 'm3/h', 2));
    }
    return lines.join('\n');
  }

  function check(sheet) {
    var read = {};
    all('input[data-reading]', sheet).forEach(function (input) {
      var wrong = fault(input);
      input.parentNode.parentNode.querySelector('.fault').textContent = wrong;
      read[attribute(input, 'reading')] = wrong ? NaN : number(input);
    });
    sheet.querySelector('.promise').textContent = promised(sheet.getAttribute('data-sheet'), read);
  }

  sheets.forEach(function (sheet) {
    sheet.addEventListener('input', function (event) {
      var at = place(sheet, attribute(event.target, 'reading'));
      if (event.target.value.trim()) { state.readings[at] = event.target.value; } else { delete state.readings[at]; }
      save();
      check(sheet);
    });
  });

  // Names, days and notes.
  function bind(name, kept) {
    all('[data-' + name + ']').forEach(function (input) {
      input.addEventListener('input', function () {
        state[kept][attribute(input, name)] = input.value;
        save();
      });
    });
  }
  bind('text', 'texts');
  bind('note', 'notes');

  function paint() {
    paintTicks();
    sheets.forEach(function (sheet) {
      all('input[data-reading]', sheet).forEach(function (input) { input.value = state.readings[place(sheet, attribute(input, 'reading'))] || ''; });
      check(sheet);
    });
    all('[data-text]').forEach(function (input) { input.value = state.texts[attribute(input, 'text')] || ''; });
    all('[data-note]').forEach(function (input) { input.value = state.notes[attribute(input, 'note')] || ''; });
    tellKept();
  }

  // The file.
  function plain(text, longest) {
    return text.replace(/[\r\n]+/g, ' / ').replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029\ufeff]/g, ' ')
      .slice(0, longest).replace(/[\ud800-\udbff](?![\udc00-\udfff])/g, '').replace(/(^|[^\ud800-\udbff])[\udc00-\udfff]/g, '$1').trim();
  }

  function filled(sheet, note) {
    var values = {};
    var names = 0;
    var title = sheet.querySelector('legend').textContent;
    var inputs = all('input[data-reading]', sheet).filter(function (input) { return input.value.trim() !== ''; });
    var isWhole = all('input[data-needed="yes"]', sheet).every(function (input) { return input.value.trim() !== '' && !fault(input); });
    inputs.forEach(function (input) {
      var name = attribute(input, 'reading');
      if (isWhole && !fault(input)) {
        values[name] = number(input) + ' ' + attribute(input, 'unit');
        names++;
      } else {
        note('left out: ' + title + ', ' + name, input.value + ' ' + attribute(input, 'unit'));
      }
    });
    return names > 0 ? values : null;
  }

  function file() {
    var out = { station: book.station };
    var notes = [];
    var note = function (about, text) {
      if (plain(text, 240)) { notes.push({ about: plain(about, 80), text: plain(text, 240) }); }
    };
    if (plain(state.texts.by || '', 60)) { out.by = plain(state.texts.by, 60); }
    var day = state.texts.on || '';
    if (/^\d{4}-\d{2}-\d{2}$/.test(day)) { out.on = day; } else if (day) { note('left out: day', day); }
    sheets.forEach(function (sheet) {
      var kind = sheet.getAttribute('data-sheet');
      var values = filled(sheet, note);
      if (!values) { return; }
      if (kind === 'station') { Object.keys(values).forEach(function (name) { out[name] = values[name]; }); }
      else if (kind === 'tank') { out.tank = values; }
      else {
        out[kind] = out[kind] || [];
        out[kind].push(kind === 'strings' ? Object.assign({ string: Number(sheet.getAttribute('data-number')) }, values) : values);
      }
    });
    var left = notes.length;
    Object.keys(state.notes).forEach(function (about) { note(about, state.notes[about] || ''); });
    out.ticked = Object.keys(state.ticks).map(function (point) {
      var tick = { point: point };
      if (state.ticks[point].at) { tick.at = state.ticks[point].at; }
      if (plain(state.ticks[point].by || '', 60)) { tick.by = plain(state.ticks[point].by, 60); }
      return tick;
    });
    out.notes = notes;
    var warned = left > 0 ? ' ' + left + ' entries cannot be used as readings and are kept as notes.' : '';
    return { text: JSON.stringify(out, null, 1) + '\n', says: out.ticked.length + ' ticks.' + warned };
  }

  one('save').addEventListener('click', function () {
    var made = file();
    var link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([made.text], { type: 'application/json' }));
    link.download = 'site-book-' + (book.station.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'station') + '.json';
    document.body.appendChild(link);
    link.click();
    link.remove();
    window.setTimeout(function () { URL.revokeObjectURL(link.href); }, 10000);
    isChanged = false;
    one('said').textContent = link.download + ': ' + made.says;
  });

  one('show').addEventListener('click', function () {
    var made = file();
    one('text').hidden = false;
    one('text').value = made.text;
    one('text').select();
    one('said').textContent = 'Copy the text into a file named .json. ' + made.says;
  });

  // What the phone holds already stays; what differs is told, not overwritten.
  function take(read) {
    var differs = 0;
    var put = function (kept, at, value) {
      if (!value) { return; }
      if (kept[at] && kept[at] !== value) { differs++; } else { kept[at] = value; }
    };
    var putSheet = function (kind, number, values) {
      all('input[data-reading]', document.querySelector('fieldset[data-sheet="' + kind + '"][data-number="' + number + '"]') || document.createElement('p'))
        .forEach(function (input) {
          var name = attribute(input, 'reading');
          if (typeof values[name] === 'string') { put(state.readings, kind + '.' + number + '.' + name, values[name].replace(' ' + attribute(input, 'unit'), '')); }
        });
    };
    (read.ticked || []).forEach(function (tick) {
      if (!state.ticks[tick.point]) { state.ticks[tick.point] = { at: tick.at || '', by: tick.by || '' }; }
    });
    (read.strings || []).forEach(function (values) { putSheet('strings', values.string, values); });
    (read.pump || []).forEach(function (values, i) { putSheet('pump', i + 1, values); });
    putSheet('station', 1, read);
    putSheet('tank', 1, read.tank || {});
    put(state.texts, 'on', read.on);
    put(state.texts, 'by', read.by);
    (read.notes || []).forEach(function (note) { put(state.notes, note.about, note.text); });
    return differs;
  }

  one('take').addEventListener('change', function () {
    var chosen = one('take').files[0];
    if (!chosen) { return; }
    var reader = new FileReader();
    reader.onload = function () {
      try {
        var read = JSON.parse(reader.result);
        if (read.station && read.station !== book.station) { throw new Error('it is of the station ' + read.station); }
        var differs = take(read);
        save();
        paint();
        one('said').textContent = 'Taken in.' + (differs > 0 ? ' ' + differs + ' entries differ and stay as they are here.' : '');
      } catch (bad) {
        one('said').textContent = chosen.name + ' cannot be taken in: ' + bad.message;
      }
      one('take').value = '';
    };
    reader.readAsText(chosen);
  });

  one('clear').addEventListener('click', function () {
    if (!window.confirm('Forget all ticks, readings and notes of this station on this phone?')) { return; }
    state = fresh();
    state.issues.push(book.brief);
    save();
    paint();
  });

  // Drawings: the pane slides by touch; two fingers, the wheel and the buttons change the width.
  var viewer = one('viewer');
  var pane = viewer.querySelector('.pane');
  var fingers = {};

  function widthOf() { return pane.firstChild ? pane.firstChild.getBoundingClientRect().width : 0; }

  function zoom(factor, x, y) {
    var drawing = pane.firstChild;
    var old = widthOf();
    var width = Math.min(Math.max(old * factor, pane.clientWidth), 12000);
    var left = (pane.scrollLeft + x) * width / old - x;
    var top = (pane.scrollTop + y) * width / old - y;
    drawing.style.width = width + 'px';
    pane.scrollLeft = left;
    pane.scrollTop = top;
  }

  function spread() {
    var at = Object.keys(fingers).map(function (id) { return fingers[id]; });
    return at.length < 2 ? null : { far: Math.hypot(at[0].x - at[1].x, at[0].y - at[1].y), x: (at[0].x + at[1].x) / 2, y: (at[0].y + at[1].y) / 2 };
  }

  all('button.zoom').forEach(function (button) {
    button.addEventListener('click', function () {
      var drawing = button.parentNode.querySelector('svg').cloneNode(true);
      pane.textContent = '';
      pane.appendChild(drawing);
      if (viewer.showModal) { viewer.showModal(); } else { viewer.setAttribute('open', ''); }
      drawing.style.width = pane.clientWidth * 2 + 'px';
    });
  });

  viewer.addEventListener('click', function (event) {
    var what = event.target.getAttribute('data-zoom');
    if (what === 'close') { if (viewer.close) { viewer.close(); } else { viewer.removeAttribute('open'); } }
    else if (what === 'fit') { pane.firstChild.style.width = pane.clientWidth + 'px'; }
    else if (what) { zoom(Number(what), pane.clientWidth / 2, pane.clientHeight / 2); }
  });
  pane.addEventListener('pointerdown', function (event) { fingers[event.pointerId] = { x: event.clientX, y: event.clientY }; });
  ['pointerup', 'pointercancel', 'pointerleave'].forEach(function (end) { pane.addEventListener(end, function (event) { delete fingers[event.pointerId]; }); });
  pane.addEventListener('pointermove', function (event) {
    if (!fingers[event.pointerId]) { return; }
    var before = spread();
    fingers[event.pointerId] = { x: event.clientX, y: event.clientY };
    var after = spread();
    if (before && after && before.far > 0) {
      var box = pane.getBoundingClientRect();
      zoom(after.far / before.far, after.x - box.left, after.y - box.top);
    }
  });
  pane.addEventListener('wheel', function (event) {
    if (!event.ctrlKey) { return; }
    event.preventDefault();
    var box = pane.getBoundingClientRect();
    zoom(event.deltaY < 0 ? 1.2 : 1 / 1.2, event.clientX - box.left, event.clientY - box.top);
  }, { passive: false });

  one('print').addEventListener('click', function () { window.print(); });
  window.addEventListener('storage', function (event) { if (event.key === key) { load(); paint(); } });
  window.addEventListener('beforeunload', function (event) { if (!isKept && isChanged) { event.preventDefault(); event.returnValue = ''; } });

  load();
  paint();
})();
