using System.Text.Json;
using Microsoft.Playwright;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>One field as the page and the server see it.</summary>
/// <param name="Id">Form or scope, and name.</param>
/// <param name="Kind">Tag or input type.</param>
/// <param name="Form">Whether it belongs to a form.</param>
/// <param name="Kept">What the server says is stored.</param>
/// <param name="Shown">What the server shows.</param>
/// <param name="Value">What stands in the field.</param>
public sealed record FieldSeen(string Id, string Kind, bool Form, string Kept, string Shown, string Value);

/// <summary>Reads and fills the fields of a page.</summary>
internal static class Fields
{
    private const string List = """
        (() => {
          const value = el => el.type === "checkbox" ? String(el.checked)
            : el.type === "radio" ? ([...document.getElementsByName(el.name)].find(one => one.checked)?.value ?? "") : el.value;
          const scope = el => el.closest("[data-form]")?.dataset.form ?? el.closest("[data-scope]")?.dataset.scope ?? "";
          return [...document.querySelectorAll("main [data-field]")].map((el, at) => ({
            at, id: scope(el) + " / " + el.dataset.field, kind: el.type === "radio" ? "radio " + el.value : el.type,
            form: !!el.closest("[data-form]"),
            kept: el.dataset.kept, shown: el.dataset.shown, value: value(el), off: el.matches(":disabled") }));
        })()
        """;

    private static readonly JsonSerializerOptions Web = new(JsonSerializerDefaults.Web);

    public static async Task<IReadOnlyList<FieldSeen>> ReadAsync(IPage page) =>
        JsonSerializer.Deserialize<List<FieldSeen>>(await page.EvaluateAsync<string>($"JSON.stringify({List})"), Web)!;

    /// <summary>Opens all forms and panels of a page.</summary>
    public static async Task OpenAllAsync(IPage page)
    {
        var scopes = await page.EvaluateAsync<string[]>(
            "[...document.querySelectorAll('main [data-opens]:not([aria-pressed])')].map(one => one.dataset.opens)"
        );
        foreach (var scope in scopes.Distinct())
        {
            var opener = page.Locator($"main [data-opens='{scope}']").First;
            var opened = page.Locator($"[data-form='{scope}'], [data-scope='{scope}']").First;
            if (!await opener.IsVisibleAsync() || await opened.IsVisibleAsync())
                continue;
            await opener.ClickAsync();
            await opened.WaitForAsync();
        }

        await page.EvaluateAsync("for (const one of document.querySelectorAll('main details')) one.open = true");
    }

    /// <summary>Types something new into each of these fields, as a hand does, and leaves it; returns what was typed.</summary>
    public static async Task<Dictionary<string, string>> ChangeAsync(IPage page, IEnumerable<string> ids, int step) =>
        JsonSerializer.Deserialize<Dictionary<string, string>>(
            await page.EvaluateAsync<string>(
                """
                ([ids, step]) => {
                  const scope = el => el.closest("[data-form]")?.dataset.form ?? el.closest("[data-scope]")?.dataset.scope ?? "";
                  const tell = (el, ...events) => events.forEach(name => el.dispatchEvent(new Event(name, { bubbles: true })));
                  const change = el => {
                    if (el.type === "checkbox" || el.type === "radio") {
                      const group = el.type === "radio" ? [...document.getElementsByName(el.name)] : [el];
                      const next = el.type === "radio" ? group.find(one => !one.checked) : el;
                      next.click();
                      return el.type === "radio" ? next.value : String(el.checked);
                    }
                    if (el.matches("select")) {
                      el.selectedIndex = (el.selectedIndex + 1) % el.options.length;
                      tell(el, "input", "change");
                      return el.value;
                    }
                    const before = el.value;
                    const text = el.type === "range" ? String(Number(before) + (Number(before) > Number(el.min) ? -1 : 1))
                      : /^\d+$/.test(before) ? String(Number(before) + step)
                      : /^\d+ [\d/]+$/.test(before) ? `${parseInt(before)} ${step}/16`
                      : /^[\d /.]+$/.test(before) ? `${step}/16`
                      : `${before} ${step}`.trim();
                    el.focus();
                    el.value = text;
                    tell(el, "input", "change");
                    el.blur();
                    return text;
                  };
                  const fields = [...document.querySelectorAll("main [data-field]")].reverse();
                  const all = new Map(fields.map(el => [`${scope(el)} / ${el.dataset.field}`, el]));
                  return JSON.stringify(Object.fromEntries(ids.map(id => [id, change(all.get(id))])));
                }
                """,
                new object[] { ids.ToArray(), step }
            )
        )!;

    /// <summary>Waits until the page is live and no answer is outstanding.</summary>
    public static async Task SettledAsync(IPage page)
    {
        try
        {
            await page.WaitForFunctionAsync($"() => {Unsettled} === ''", null, new() { Timeout = 60_000 });
        }
        catch (TimeoutException late)
        {
            var state = await page.EvaluateAsync<string>($"() => {Unsettled}");
            throw new TimeoutException($"{page.Url} did not settle: {state}", late);
        }
    }

    // What keeps a page from being settled, in words.
    private const string Unsettled = """
        (() => {
          if (!document.querySelector("fieldset.until-live:not([disabled])"))
            return "not live: " + document.body.innerText.slice(0, 300);
          if (document.body.dataset.line === "down") return "the line is down";
          const said = [...document.querySelectorAll("[data-save-state]")].map(one => one.textContent)
            .filter(text => /Saving|Kept|not saved yet/i.test(text));
          const open = [...document.querySelectorAll("main [data-field]")]
            .filter(el => Number(el.dataset.seq) !== Number(el.dataset.heard))
            .map(el => `${el.dataset.field} heard ${el.dataset.heard}, answered ${el.dataset.seq}`);
          return [...said, ...open].join("; ");
        })()
        """;

    /// <summary>Waits until the browser draws the page's next frame.</summary>
    public static Task DrawnAsync(IPage page) =>
        page.EvaluateAsync("() => new Promise(done => requestAnimationFrame(() => done()))");

    public static Task<string> SaveWordsAsync(IPage page) =>
        page.EvaluateAsync<string>("document.querySelector('[data-save-state]')?.textContent ?? ''");
}
