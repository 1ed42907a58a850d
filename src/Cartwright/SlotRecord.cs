using System.Text.Json;
using Cartwright.Manifests;
using Cartwright.Slots;

namespace Cartwright;

/// <summary>Writes the slots of a multi-game image.</summary>
internal static class SlotRecord
{
    public static void Write(Utf8JsonWriter json, SlotPlan? plan)
    {
        if (plan is null)
        {
            return;
        }

        json.WriteStartArray("slots");
        foreach (var slot in plan.Slots)
        {
            json.WriteStartObject();
            json.WriteNumber("slot", slot.Index);
            json.WriteString("title", slot.Title);
            json.WriteString("file", slot.File);
            json.WriteString("region", slot.Region);
            json.WriteString("start", Number.Hex(slot.Start, 6));
            json.WriteNumber("slotSize", slot.Size);
            BuildRecord.WriteDigest(json, slot.Digest);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("switchPositions");
        foreach (var position in plan.Positions)
        {
            json.WriteStartObject();
            json.WriteStartArray("switches");
            foreach (var isHigh in position.IsHigh)
            {
                json.WriteStringValue(isHigh ? "open" : "closed");
            }

            json.WriteEndArray();
            json.WriteString("starts", position.Title);
            json.WriteString("shows", position.Shown);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
