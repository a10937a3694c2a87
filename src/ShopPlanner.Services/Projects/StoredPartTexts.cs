using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Projects;

/// <summary>A stored row of a parts list as the texts that were typed.</summary>
internal static class StoredPartTexts
{
    extension(StoredPart part)
    {
        public PartTexts Texts =>
            new(part.Id, part.Mark, part.Name, part.Material, part.Length, part.Width, part.Quantity, part.CanTurn, part.Note)
            {
                LongBy = part.LongBy,
                WideBy = part.WideBy,
                Practice = part.Practice,
            };

        public void Take(PartTexts texts)
        {
            (part.Mark, part.Name, part.Material) = (texts.Mark, texts.Name, texts.Material);
            (part.Length, part.Width, part.Quantity) = (texts.Length, texts.Width, texts.Quantity);
            (part.CanTurn, part.Note) = (texts.CanTurn, texts.Note);
            (part.LongBy, part.WideBy, part.Practice) = (texts.LongBy, texts.WideBy, texts.Practice);
        }
    }
}
