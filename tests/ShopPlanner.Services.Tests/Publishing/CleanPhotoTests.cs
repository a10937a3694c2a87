using System.Text;
using ShopPlanner.Services.Publishing;

namespace ShopPlanner.Services.Tests.Publishing;

/// <summary>A published photo says nothing of place, time and camera, and is the same picture.</summary>
public sealed class CleanPhotoTests
{
    public static TheoryData<string, byte[]> Files() =>
        new()
        {
            { "jpg", Pictures.Jpeg() },
            { "png", Pictures.Png() },
            { "webp", Pictures.Webp() },
        };

    [Theory]
    [MemberData(nameof(Files))]
    public void Nothing_of_the_place_is_left(string ending, byte[] file)
    {
        Assert.Contains(Pictures.Place, Encoding.Latin1.GetString(file), StringComparison.Ordinal);
        var (photo, fault) = CleanPhoto.Of("bench." + ending, file);
        Assert.Null(fault);
        Assert.Equal(ending, photo!.Ending);
        var text = Encoding.Latin1.GetString(photo.Bytes.Span);
        Assert.DoesNotContain("GPS", text, StringComparison.Ordinal);
        Assert.DoesNotContain("XMP", text, StringComparison.Ordinal);
        Assert.DoesNotContain("xap", text, StringComparison.Ordinal);
        Assert.DoesNotContain("tEXt", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Cleaned_again_it_stays_the_same(string ending, byte[] file)
    {
        var once = CleanPhoto.Of("a." + ending, file).Photo!;
        Assert.Equal(once.Bytes.ToArray(), CleanPhoto.Of("a." + ending, once.Bytes).Photo!.Bytes.ToArray());
    }

    [Fact]
    public void The_picture_itself_and_its_colors_are_copied_byte_for_byte()
    {
        var clean = CleanPhoto.Of("a.jpg", Pictures.Jpeg(1)).Photo!.Bytes.Span;
        Assert.True(clean.IndexOf(Pictures.Scan) > 0);
        Assert.True(clean.IndexOf("ICC_PROFILE"u8) > 0);
        Assert.True(clean.EndsWith((ReadOnlySpan<byte>)[0xFF, 0xD9]));
        Assert.True(clean.IndexOf("Exif"u8) < 0);
    }

    [Theory]
    [InlineData(1, false)]
    [InlineData(6, true)]
    [InlineData(8, true)]
    [InlineData(77, false)]
    public void Which_way_up_it_is_stays_known(int turned, bool isKept)
    {
        var clean = CleanPhoto.Of("a.jpg", Pictures.Jpeg(turned)).Photo!.Bytes.ToArray();
        // Big-endian TIFF, one entry: orientation, a short (Exif 2.3, 4.6.2).
        byte[] entry = [0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)turned, 0, 0];
        Assert.Equal(isKept, clean.AsSpan().IndexOf(entry) > 0);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_file_that_is_cut_off_anywhere_is_refused_or_clean(string ending, byte[] file)
    {
        for (var length = 0; length < file.Length; length++)
        {
            var (photo, fault) = CleanPhoto.Of("a." + ending, file.AsMemory(0, length));
            Assert.True(photo is null ^ fault is null);
            if (photo is not null)
                Assert.DoesNotContain("GPS", Encoding.Latin1.GetString(photo.Bytes.Span), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_is_no_picture_or_too_large_is_refused()
    {
        Assert.Contains("isn't a JPEG", CleanPhoto.Of("a.heic", "ftypheic"u8.ToArray()).Fault!.Message, StringComparison.Ordinal);
        var large = new byte[CleanPhoto.MostBytes + 1];
        Assert.Contains("20 MB", CleanPhoto.Of("a.jpg", large).Fault!.Message, StringComparison.Ordinal);
    }
}
