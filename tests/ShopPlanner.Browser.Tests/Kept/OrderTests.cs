using Microsoft.Playwright;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>Whatever the order and the delay of answers, the newest text stays in the field.</summary>
public sealed class OrderTests(KeptFixture kept) : IClassFixture<KeptFixture>
{
    [Fact]
    public async Task Answers_in_any_order_leave_the_newest_text_in_the_field()
    {
        var page = await kept.OpenAsync();
        await page.GotoAsync("/shop");
        await Fields.SettledAsync(page);
        var wrong = await page.EvaluateAsync<string[]>(
            """
            async () => {
              let state = 20261127;
              const random = most => (state = (state * 1103515245 + 12345) % 2147483648) % most;
              const wrong = [], pause = () => new Promise(done => setTimeout(done));
              for (let round = 0; round < 200; round++) {
                const field = Object.assign(document.createElement("input"), { type: "text", value: "0" });
                const begun = { kept: "0", shown: "0", heard: "0", seq: "0", round: "0", send: "input" };
                Object.assign(field.dataset, { field: "order " + round, ...begun });
                document.querySelector("main fieldset").append(field);
                await pause();
                const sent = [];
                field.addEventListener("shop-typed", event => { event.stopPropagation(); sent.push(event.detail); });
                let newest = "0", answered = 0;
                const answer = async () => {
                  const one = sent.splice(random(sent.length), 1)[0];
                  answered = Math.max(answered, one.seq);
                  const heard = String(Math.max(one.seq, Number(field.dataset.heard)));
                  Object.assign(field.dataset, { heard, shown: one.value });
                  if (answered === one.seq) Object.assign(field.dataset, { seq: String(one.seq), kept: one.value });
                  else field.dataset.shown = field.dataset.kept;
                  await pause();
                  const shown = `shows ${field.value} after the answer to ${one.value}`;
                  if (field.value !== newest) wrong.push(`round ${round}: typed ${newest}, ${shown}`);
                };
                for (let i = 1; i <= 6; i++) {
                  newest = field.value = `${round}.${i}`;
                  field.dispatchEvent(new Event("input", { bubbles: true }));
                  if (sent.length && random(2)) await answer();
                }
                while (sent.length) await answer();
                if (field.dataset.kept !== newest) wrong.push(`round ${round}: kept ${field.dataset.kept}`);
                field.remove();
              }
              return wrong;
            }
            """
        );
        Assert.Empty(wrong);
    }
}
