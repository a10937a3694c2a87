using Microsoft.Playwright;

namespace ShopPlanner.Browser.Tests.Pages;

/// <summary>Words that stand beside each other are parted by a blank, also for those who hear the page.</summary>
internal static class JoinedWordsRule
{
    // A style may draw a gap where the text has none: a screen reader, and who copies the text, reads one word.
    /// <summary>Words that run together.</summary>
    public static async Task<IEnumerable<string>> BrokenAsync(IPage page) =>
        (await JoinedAsync(page)).Select(words => $"Words run together: {words}");

    private static Task<string[]> JoinedAsync(IPage page) =>
        page.EvaluateAsync<string[]>(
            """
            () => {
              const texts = document.createTreeWalker(document.querySelector("main"), NodeFilter.SHOW_TEXT), found = [];
              const isInline = el => getComputedStyle(el).display === "inline" && !el.closest("svg, script, style, template");
              const isRead = text => text.parentElement.checkVisibility() && text.data.length > 0;
              let before = null;
              for (let text; (text = texts.nextNode());) {
                if (!isRead(text)) continue;
                const box = one => { let el = one.parentElement; while (isInline(el)) el = el.parentElement; return el; };
                const isParted = () => {
                  const between = document.createRange();
                  between.setStartAfter(before);
                  between.setEndBefore(text);
                  return between.cloneContents().querySelector("br, input, img, svg, button, select") !== null;
                };
                if (before && before.parentElement !== text.parentElement && box(before) === box(text)
                  && getComputedStyle(box(text)).display.match(/block|cell|item/) && !isParted()
                  && /[\p{L}\p{N}.:;,]$/u.test(before.data) && /^[\p{L}\p{N}]/u.test(text.data))
                  found.push(`${before.data.slice(-20)}|${text.data.slice(0, 20)}`);
                before = text;
              }
              return found;
            }
            """
        );
}
